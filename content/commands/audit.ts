/**
 * The audit from a terminal: `npm run audit`, with `-- --json` as data, with a folder to audit
 * another course: `npm run audit -- my-course/content`. Exit status 1 where a rule is broken, 2
 * where the course cannot be read.
 */
import { audit } from '../../lib/curriculum/rules.ts';
import { readCurriculum } from '../read-curriculum.ts';

const given = process.argv.slice(2);
const json = given.includes('--json');
const [folder = 'content', ...surplus] = given.filter((one) => one !== '--json');

try {
  const unknown = [folder, ...surplus].find((one) => one.startsWith('-')) ?? surplus[0];
  if (unknown !== undefined) throw new Error(`${unknown}: takes one folder and --json, no more`);
  const course = await readCurriculum(folder);
  const verdicts = audit(course);
  if (json)
    console.log(
      JSON.stringify(
        verdicts.map(({ rule, findings, broken }) => ({
          rule: rule.id,
          sentence: rule.sentence,
          met: broken.length === 0,
          lookedAt: findings.length,
          broken: broken.map(({ says, at }) => ({ says, at })),
        })),
        null,
        2,
      ),
    );
  else {
    console.log(`${course.lessons.length} lessons, ${course.exercises.length} exercises`);
    for (const { rule, findings, broken } of verdicts) {
      const count = `${findings.length} looked at`;
      console.log(`${broken.length === 0 ? 'met   ' : 'BROKEN'} ${rule.sentence} (${count})`);
      for (const { says } of broken) console.log(`         ${says}`);
    }
  }
  process.exitCode = verdicts.every(({ broken }) => broken.length === 0) ? 0 : 1;
} catch (problem) {
  console.error(problem instanceof Error ? problem.message : problem);
  process.exitCode = 2;
}
