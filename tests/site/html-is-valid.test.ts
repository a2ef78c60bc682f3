import { type ConfigData, HtmlValidate } from 'html-validate';
import { expect, it } from 'vitest';
import { eachPage } from './built-site.ts';

const rules: ConfigData = {
  extends: ['html-validate:recommended', 'html-validate:document', 'html-validate:a11y'],
  rules: {
    // Both spellings of a void element are valid; Astro and Preact write different ones.
    'void-style': 'off',
    'require-sri': ['error', { target: 'crossorigin' }],
    // An input without a type is a text field, in HTML and in the intent.
    'no-implicit-input-type': 'off',
    // Astro puts a component's <style> where the component stands.
    'element-permitted-content': 'off',
    // A calculator answers at every key: there is nothing to submit.
    'wcag/h32': 'off',
    // The security policy would refuse them.
    'no-inline-style': 'error',
  },
};
const validator = new HtmlValidate(rules);

it.each(eachPage)('%s', async (path, page) => {
  const report = await validator.validateString(page.html, path);
  const messages = report.results.flatMap((result) => result.messages);
  expect(
    messages.map(({ line, column, ruleId, message }) => `${line}:${column} ${ruleId}: ${message}`),
  ).toEqual([]);
});
