import { execFile } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import { mkdir, mkdtemp, rename, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { delimiter, dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { chromium } from 'playwright-core';

export interface BrowserProgram {
  executablePath: string;
  args: string[];
  env: Record<string, string | undefined>;
}

const namesOnPath = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'];

const cache = fileURLToPath(new URL('../../.cache/', import.meta.url));

/** `--no-sandbox`: containers and many build machines give Chromium no user namespace. */
const args = ['--no-sandbox'];

/**
 * Finds a Chromium to test with: the one named by CHROMIUM_PATH, else one on PATH, else
 * playwright's own, else the one that came with `npm ci` (Linux on x64).
 * @throws Error with a sentence on what to install when there is none
 */
export async function findBrowser(env = process.env): Promise<BrowserProgram> {
  if (env.CHROMIUM_PATH) {
    if (!canRun(env.CHROMIUM_PATH)) {
      throw new Error(`CHROMIUM_PATH names no program that can run: ${env.CHROMIUM_PATH}`);
    }
    return { executablePath: env.CHROMIUM_PATH, args, env };
  }
  const installed = onPath(env.PATH) ?? [chromium.executablePath()].find(canRun);
  if (installed) return { executablePath: installed, args, env };
  if (process.platform === 'linux' && process.arch === 'x64') return packaged(env);
  throw new Error(
    'The browser tests need Chromium and found none. Install it (Debian: apt-get install chromium) ' +
      'or put the path of a Chromium or Chrome program in CHROMIUM_PATH.',
  );
}

function onPath(path = ''): string | undefined {
  return path
    .split(delimiter)
    .flatMap((directory) => namesOnPath.map((name) => join(directory, name)))
    .find(canRun);
}

function canRun(program: string): boolean {
  try {
    accessSync(program, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/**
 * Unpacks the Chromium of @sparticuz/chromium, once, into a directory of its own: the package
 * takes any file called `chromium` in the temporary directory for its own, whatever its version,
 * and `npm ci` empties node_modules. Its own start arguments switch web security off: not used.
 */
async function packaged(env: NodeJS.ProcessEnv): Promise<BrowserProgram> {
  const require = createRequire(import.meta.url);
  const home = dirname(dirname(require.resolve('@sparticuz/chromium')));
  const { version } = require(join(home, 'package.json'));
  const directory = join(cache, `chromium-${version}`);
  if (!existsSync(directory)) {
    await mkdir(cache, { recursive: true });
    const unpacking = await mkdtemp(join(cache, 'unpacking-'));
    await unpackInto(unpacking, env);
    await writeFile(join(unpacking, 'fonts.conf'), fontsOf(directory));
    // Renamed when whole, so that an interrupted run leaves no half a browser behind.
    await rename(unpacking, directory).catch(() => rm(unpacking, { recursive: true }));
  }
  const libraries = [join(directory, 'al2023', 'lib'), env.LD_LIBRARY_PATH].filter(Boolean);
  const bareMachine = !existsSync('/etc/fonts/fonts.conf');
  return {
    executablePath: join(directory, 'chromium'),
    args,
    env: {
      ...env,
      LD_LIBRARY_PATH: libraries.join(delimiter),
      ...(bareMachine && { FONTCONFIG_FILE: join(directory, 'fonts.conf') }),
    },
  };
}

/** In a process of its own, since the package changes the environment when it is imported. */
async function unpackInto(directory: string, env: NodeJS.ProcessEnv): Promise<void> {
  const script = "import packed from '@sparticuz/chromium'; await packed.executablePath();";
  await promisify(execFile)(process.execPath, ['--input-type=module', '--eval', script], {
    cwd: fileURLToPath(new URL('.', import.meta.url)),
    env: {
      ...env,
      TMPDIR: directory,
      // This name makes it unpack the libraries that a bare machine lacks: nss, nspr, expat.
      AWS_EXECUTION_ENV: 'AWS_Lambda_nodejs24.x',
    },
  });
}

const fontsOf = (directory: string) =>
  `<?xml version="1.0"?><fontconfig><dir>${directory}/fonts</dir></fontconfig>\n`;
