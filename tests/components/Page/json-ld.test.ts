import fc from 'fast-check';
import { expect, it } from 'vitest';
import { jsonLd } from '../../../components/Page/json-ld.ts';

it('cannot end its own script element', () => {
  const text = jsonLd('Course', { name: '</script><img src=x onerror=alert(1)><!--' });
  expect(text).not.toContain('<');
});

it('says what it was given', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (name) => {
      const said = JSON.parse(jsonLd('LearningResource', { name }));
      expect(said).toEqual({
        '@context': 'https://schema.org',
        '@type': 'LearningResource',
        name,
      });
    }),
  );
});
