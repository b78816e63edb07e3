/**
 * The files of the built page, listed once: what is not in the list does not exist, so no path can lead out of the folder.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { contentType } from './headers.ts';

type PageFile = { bytes: Buffer; type: string };
export type PageFiles = { find(pathname: string): PageFile | null };

/**
 * List a folder of built files.
 * @param folder absolute path of the build; a missing folder holds nothing
 */
export function pageFiles(folder: string): PageFiles {
  const names = new Map<string, string>();
  for (const entry of listed(folder)) names.set(`/${relative(folder, entry).split(sep).join('/')}`, entry);
  const read = new Map<string, PageFile>();
  return {
    find(pathname) {
      const wanted = pathname === '/' ? '/index.html' : pathname;
      const file = names.get(wanted);
      if (!file) return null;
      const page = read.get(wanted) ?? { bytes: readFileSync(file), type: contentType(wanted) };
      read.set(wanted, page);
      return page;
    },
  };
}

function listed(folder: string): string[] {
  try {
    const entries = readdirSync(folder, { withFileTypes: true, recursive: true });
    return entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  } catch {
    return [];
  }
}
