/**
 * The audit from a terminal: `npm run audit`, with `-- --json` as data, with a folder to audit
 * another course: `npm run audit -- my-course/content`. Exit status 1 where a rule is broken.
 */
import { audit } from '../../lib/curriculum/rules.ts';
import { readCurriculum } from '../read-curriculum.ts';

const [json, folders] = [
  process.argv.includes('--json'),
  process.argv.slice(2).filter((one) => !one.startsWith('--')),
];
const course = readCurriculum(folders[0] ?? 'content');
const verdicts = audit(course);
const broken = verdicts.filter(({ places }) => places.length > 0);

if (json)
  console.log(
    JSON.stringify(
      verdicts.map(({ rule, places }) => ({
        rule: rule.id,
        sentence: rule.sentence,
        met: places.length === 0,
        places,
      })),
      null,
      2,
    ),
  );
else {
  console.log(`${course.lessons.length} lessons, ${course.exercises.length} exercises`);
  for (const { rule, places } of verdicts) {
    console.log(`${places.length === 0 ? 'met   ' : 'BROKEN'} ${rule.sentence}`);
    for (const place of places) console.log(`         ${place}`);
  }
}
process.exitCode = broken.length === 0 ? 0 : 1;
