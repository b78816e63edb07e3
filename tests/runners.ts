/**
 * The two test runners, and what came of them as numbers.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { root } from './checks.ts';
import type { Counts, Told } from './counts.ts';
import type { Report } from './report-file.ts';

export type RunnerResult = { counts: Counts; skips: Told[]; failures: Told[] };

/** Everything under tests/ but the screens. */
export function runVitest(): RunnerResult {
  const report = vitestReport([]);
  if (!report) return broken('vitest');
  const inState = (state: string) => report.tests.filter((test) => test.state === state);
  return {
    counts: {
      passed: inState('passed').length,
      failed: inState('failed').length + report.loose.length,
      skipped: inState('skipped').length,
    },
    skips: inState('skipped'),
    failures: [...inState('failed'), ...report.loose.map((reason) => ({ name: 'vitest', reason }))],
  };
}

/** What came of the tests of some folders (all, if none is named), or null when there is no report. */
export function vitestReport(folders: readonly string[], quiet = false): Report | null {
  const folder = mkdtempSync(join(tmpdir(), 'kitbound-report-'));
  const file = join(folder, 'report.json');
  const args = ['run', ...folders, ...(quiet ? [] : ['--reporter=dot']), '--reporter=./tests/report-file.ts'];
  runTool('vitest/vitest.mjs', args, quiet ? 'ignore' : 'inherit', { KITBOUND_REPORT: file });
  return takeJson(folder, file) as Report | null;
}

type PlaywrightTest = {
  status: string;
  annotations: { type: string; description?: string }[];
  results: { error?: { message?: string } }[];
};
type PlaywrightSuite = { suites?: PlaywrightSuite[]; specs?: { title: string; tests: PlaywrightTest[] }[] };
type PlaywrightReport = { suites: PlaywrightSuite[]; errors: { message?: string }[] };

/** The screens, and the real window where its binary is. */
export function runPlaywright(): RunnerResult {
  const folder = mkdtempSync(join(tmpdir(), 'kitbound-report-'));
  const file = join(folder, 'report.json');
  runTool('playwright/cli.js', ['test', '--reporter=line,json'], 'inherit', { PLAYWRIGHT_JSON_OUTPUT_NAME: file });
  const report = takeJson(folder, file) as PlaywrightReport | null;
  if (!report) return broken('playwright');
  const tests = report.suites.flatMap(testsOf);
  const skipped = tests.filter((test) => test.status === 'skipped');
  const failed = tests.filter((test) => ['unexpected', 'flaky'].includes(test.status));
  return {
    counts: {
      passed: tests.filter((test) => test.status === 'expected').length,
      failed: failed.length + report.errors.length,
      skipped: skipped.length,
    },
    skips: skipped.map((test) => ({
      name: test.title,
      reason: test.annotations.find((each) => each.type === 'skip')?.description ?? 'no reason given',
    })),
    failures: [
      ...failed.map(({ title, results }) => ({ name: title, reason: messageOf(results.find(({ error }) => error)?.error) })),
      ...report.errors.map((error) => ({ name: 'playwright', reason: messageOf(error) })),
    ],
  };
}

const messageOf = (error: { message?: string } | undefined): string => error?.message ?? 'no reason given';

function testsOf(suite: PlaywrightSuite): (PlaywrightTest & { title: string })[] {
  const own = (suite.specs ?? []).flatMap((spec) => spec.tests.map((test) => ({ ...test, title: spec.title })));
  return [...own, ...(suite.suites ?? []).flatMap(testsOf)];
}

function broken(runner: string): RunnerResult {
  return { counts: { passed: 0, failed: 1, skipped: 0 }, skips: [], failures: [{ name: runner, reason: 'made no report' }] };
}

function runTool(tool: string, args: readonly string[], out: 'inherit' | 'ignore', env: Record<string, string>): void {
  const stdio: ('inherit' | 'ignore')[] = ['ignore', out, 'inherit'];
  spawnSync(process.execPath, [join(root, 'node_modules', tool), ...args], { cwd: root, stdio, env: { ...process.env, ...env } });
}

function takeJson(folder: string, file: string): unknown {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return null;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
