/**
 * `learner's` as a printer sets it: a straight mark after a letter becomes an apostrophe. After a
 * digit it stays, since there it is feet, as the double one is inches: `2' 6"`.
 */
export const withApostrophes = (text: string): string => text.replace(/(?<=\p{L})'/gu, '’');
