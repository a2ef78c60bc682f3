/** Which lessons speak of a topic, by the words that both use. A hint, not a judgment. */

const empty = new Set(
  'and the for with that from into are not its this each all any can has have how one their them they when what which will your our use using used such other than weld welds welding welder welders learner student students work prior'.split(
    ' ',
  ),
);

/** Words of three letters and more, with endings taken off. */
const stems = (text: string): string[] =>
  (text.toLowerCase().match(/[a-z]{3,}/g) ?? [])
    .filter((word) => !empty.has(word))
    .map((word) => word.replace(/(ings?|ed|es|s|al|ally|ly)$/, ''))
    .filter((word) => word.length >= 3);

/** Ids of up to three lessons, the likeliest first; words that few lessons use count for more. */
export function likelyLessons(
  topic: string,
  lessons: readonly { id: string; words: string }[],
): string[] {
  const own = lessons.map(({ id, words }) => ({ id, stems: new Set(stems(words)) }));
  const asked = [...new Set(stems(topic))];
  return own
    .map((lesson) => ({
      id: lesson.id,
      score: asked
        .filter((stem) => lesson.stems.has(stem))
        .reduce((sum, stem) => {
          const users = own.filter((one) => one.stems.has(stem)).length;
          return sum + Math.log(own.length / users) + 0.1;
        }, 0),
    }))
    .filter(({ score }) => score > 0.5)
    .sort((a, b) => b.score - a.score)
    .slice(0, 3)
    .map(({ id }) => id);
}
