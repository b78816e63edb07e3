/**
 * A reporter that leaves what came of every test in the file named by KITBOUND_REPORT, reasons of skips and failures included.
 */
import { writeFileSync } from 'node:fs';
import type { Reporter, TestModule } from 'vitest/node';

export type Report = {
  tests: { file: string; name: string; state: 'passed' | 'failed' | 'skipped'; reason: string }[];
  /** Files that could not be loaded, and errors that belong to no test. */
  loose: string[];
};

export default class ReportFile implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly { message: string }[]): void {
    const report: Report = {
      tests: modules.flatMap((module) =>
        [...module.children.allTests()].map((test) => {
          const result = test.result();
          const state = result.state === 'pending' ? 'failed' : result.state;
          const reason = result.state === 'skipped' ? result.note : result.errors?.[0]?.message;
          return { file: module.moduleId, name: test.fullName, state, reason: reason ?? 'no reason given' };
        }),
      ),
      loose: [
        ...modules.flatMap((module) => module.errors().map((error) => `${module.moduleId}: ${error.message}`)),
        ...unhandled.map((error) => error.message),
      ],
    };
    const file = process.env['KITBOUND_REPORT'];
    if (file) writeFileSync(file, JSON.stringify(report));
  }
}
