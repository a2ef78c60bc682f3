/**
 * A function of an object that never changes, and of a few plain values: asked the same again, it
 * answers from memory. The last answer for each object is kept, as long as the object is.
 */
export function remembered<K extends object, A extends (string | number)[], R>(
  ask: (object: K, ...rest: A) => R,
): (object: K, ...rest: A) => R {
  const answers = new WeakMap<K, { key: string; answer: R }>();
  return (object, ...rest) => {
    const key = rest.join(' ');
    const known = answers.get(object);
    if (known?.key === key) return known.answer;
    const answer = ask(object, ...rest);
    answers.set(object, { key, answer });
    return answer;
  };
}
