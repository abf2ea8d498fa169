import { addAnswers } from './later.ts';
import { listAnswers } from './lists.ts';
import { numberAnswers } from './numbers.ts';
import { wordAnswers } from './words.ts';

/*
 * What all kinds are asked once something was answered: on a page it is fetched later than they are
 * (families/tell.ts); everywhere else it is there from the start.
 */
addAnswers({ listAnswers, numberAnswers, wordAnswers });
