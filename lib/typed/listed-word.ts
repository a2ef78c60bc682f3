/** Which of a form's words is meant by one that a program or a letter uses instead. */
import { readFraction, spellFractions } from '../text/inches.ts';
import { readDesignation } from './electrode-designation.ts';
import { byDiametreNominal, otherWords } from './other-words.ts';

/** What goes along with a name and says nothing more: `ASTM`, `Grade`, `Sch`, `weld`. */
const beside =
  /\b(?:astm|grade|gr|class|cl|type|schedule|sch|nps|position|welds?)\b\.?|\b(?:schedule|sch|nps)(?=\d)|(?<=\d)gr(?=\w{1,2}$)/g;

/** The year of a code, as in `AWS D1.1:2020`. */
const edition = /(?:19|20)\d\d$/;

/** Without case, blanks, hyphens, quotation marks and what stands beside a name. */
export const plainWord = (word: string): string =>
  word
    .toLowerCase()
    .replace(/\([^)]*\)/g, ' ')
    .replace(/[’'"”]/g, '')
    .replace(beside, ' ')
    .replace(/\/a\d+m\b/, '')
    .trim()
    // A minus in front stays: -1 is not 1.
    .replace(/(?!^)[\s,:;_–-]/g, '');

/** `4g + 3G`, `3G/4G` and `3G and 4G` are 3G+4G. */
function testName(typed: string): string | undefined {
  const parts = typed.toUpperCase().split(/\s*(?:[+/&,]|\bAND\b)\s*/);
  return parts.length > 1 && parts.every((part) => /^\d[FG]$/.test(part))
    ? parts.toSorted().join('+')
    : undefined;
}

/** `1.25`, `1¼` and `1 1/4"` are the pipe size 1-1/4; `Sch 80` is 80. */
function sameNumber(choices: readonly string[], typed: string): string | undefined {
  const value = numberOf(
    typed
      .toLowerCase()
      .replace(/["”]|\s+in$/g, '')
      .replace(beside, '')
      .trim(),
  );
  return value === undefined ? undefined : choices.find((choice) => numberOf(choice) === value);
}

function numberOf(text: string): number | undefined {
  const spelled = spellFractions(text);
  if (/^\d+(?:\.\d+)?$/.test(spelled)) return Number(spelled);
  const value = readFraction(spelled);
  return Number.isNaN(value) ? undefined : value;
}

/**
 * The listed word for `typed`, or undefined where none is meant, or more than one could be: the
 * words then stay as they were typed, and the reader is told what there is. Numbers are compared
 * as numbers, so that 11/4 is never 1-1/4.
 */
export function listedWord(choices: readonly string[], typed: string): string | undefined {
  const lower = typed.trim().toLowerCase();
  const same = choices.find((choice) => choice.toLowerCase() === lower);
  if (same !== undefined) return same;
  const words = choices.filter((choice) => numberOf(choice) === undefined);
  const plain = plainWord(typed);
  const sayings = [plain, plain.replace(edition, '')];
  const alike = words.filter((choice) => sayings.includes(plainWord(choice)));
  if (alike.length === 1) return alike[0];
  const other = words.find((choice) =>
    otherWords[choice]?.some((word) => sayings.includes(plainWord(word))),
  );
  if (other !== undefined) return other;
  const { names, kind } = readDesignation(typed);
  const named = [
    sameNumber(choices, typed),
    byDiametreNominal[plain],
    testName(typed),
    kind,
    ...names,
  ];
  return named.find((name) => name !== undefined && choices.includes(name));
}
