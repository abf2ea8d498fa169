/** Tasks of a level that are drawn to look at each; three times as many with `npm test -- --slow`. */
export const howMany = process.env.BUCKTAIL_SLOW ? 300 : 100;
