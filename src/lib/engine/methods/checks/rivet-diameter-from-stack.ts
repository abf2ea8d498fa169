import { checked } from '../../solver/checked.ts';
import { rivetDiameterFromStack } from '../rivet-diameter-from-stack.ts';
import { rivetTaken } from './parts/diameter.ts';

export const check = checked(rivetDiameterFromStack, rivetTaken);
