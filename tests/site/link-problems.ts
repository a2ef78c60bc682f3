import { attribute, type BuiltPage, type BuiltSite } from './built-site.ts';

const host = 'http://this-site.invalid';

/**
 * What is wrong with the addresses on a page: a sentence each. Looks at all that is followed or
 * fetched; addresses of other hosts are left to other tests.
 */
export function linkProblems(page: BuiltPage, site: BuiltSite): string[] {
  const problems: string[] = [];
  for (const address of new Set(addressesOn(page))) {
    const url = new URL(address, host + page.path);
    if (url.origin !== host) continue;
    const path = decodeURIComponent(url.pathname);
    const complain = (why: string) => problems.push(`${page.path} → ${address}: ${why}`);
    if (!`${path}/`.startsWith(site.base)) complain(`outside the base path ${site.base}`);
    else if (site.files.has(`${path}/index.html`)) complain('lacks its final slash');
    else if (!site.files.has(path) && !site.files.has(`${path}index.html`))
      complain('leads nowhere');
    else {
      const [id = '', words] = url.hash.slice(1).split(':~:text=').map(decodeURIComponent);
      if (id !== '' && !hasFragment(site, path, id)) complain('there is nothing with this id');
      if (words !== undefined && !hasWords(site, path, words))
        complain('these words are not there');
    }
  }
  return problems;
}

export function addressesOn(page: BuiltPage): string[] {
  const found: (string | undefined)[] = [];
  for (const name of ['href', 'src', 'action', 'formaction', 'poster', 'data']) {
    for (const element of page.document.querySelectorAll(`[${name}]`)) {
      if (name === 'data' && element.tagName !== 'object') continue;
      found.push(attribute(element, name));
    }
  }
  for (const element of page.document.querySelectorAll('[srcset]')) {
    for (const candidate of attribute(element, 'srcset')?.split(',') ?? []) {
      found.push(candidate.trim().split(/\s/)[0]);
    }
  }
  return found.filter(
    (address) => address !== undefined && !/^(data|blob|mailto|tel):/.test(address),
  ) as string[];
}

const textByPage = new WeakMap<BuiltPage, string>();

/** What a text directive looks for. */
function hasWords(site: BuiltSite, path: string, words: string): boolean {
  const page = site.pages.find((one) => one.path === path || one.path === `${path}index.html`);
  if (!page) return false;
  let text = textByPage.get(page);
  if (text === undefined) {
    text = (page.document.querySelector('main')?.textContent ?? '').replace(/\s+/g, ' ');
    textByPage.set(page, text);
  }
  return text.includes(words);
}

const idsByPage = new WeakMap<BuiltPage, Set<string>>();

function hasFragment(site: BuiltSite, path: string, id: string): boolean {
  const page = site.pages.find((one) => one.path === path);
  if (!page) return true;
  let ids = idsByPage.get(page);
  if (!ids) {
    const marked = page.document.querySelectorAll('[id]');
    ids = new Set(marked.map((element) => attribute(element, 'id') ?? ''));
    idsByPage.set(page, ids);
  }
  return ids.has(id);
}
