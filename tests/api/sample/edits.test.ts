/**
 * The edits of the sample year: made by the ink, handed over in their time but for a few, and in the way of the inquiry that collides.
 */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { EditPlan } from '../../../core/contract/deliverables.ts';
import type { Past } from '../../../core/contract/spent.ts';
import type { FitResult } from '../../../core/contract/fit.ts';
import { told, type Told } from './told.ts';

const folder = mkdtempSync(join(tmpdir(), 'kitbound-sample-edits-'));
let year: Told;
beforeAll(async () => {
  year = await told('2026-11-26T15:00:00Z', folder);
}, 120_000);
afterAll(() => {
  year.store.close();
  rmSync(folder, { recursive: true, force: true });
});

const late = (plan: EditPlan) => plan.edits.filter(({ lateDays }) => lateDays > 0);

test('most are delivered; of what is open some wait for their files, and one or two are late', async () => {
  const { plan } = await year.call<{ plan: EditPlan }>('deliverables.plan');
  const marks = year.store.read((db) =>
    db.$client
      .prepare<[], { made: number; delivered: number }>(
        "select count(*) as made, sum(done_at is not null) as delivered from stages where kind = 'delivered'",
      )
      .get(),
  );
  expect(marks?.delivered).toBeGreaterThan(40);
  expect((marks?.made ?? 0) - (marks?.delivered ?? 0)).toBeGreaterThanOrEqual(plan.edits.length);
  expect(late(plan).length).toBeGreaterThanOrEqual(1);
  expect(late(plan).length).toBeLessThanOrEqual(3);
  expect(plan.edits.filter(({ waits }) => waits.startsWith('the camera files')).length).toBeGreaterThanOrEqual(3);
  expect(plan.troubles).toEqual([]);
});

test('the inquiry from Thunder Bay collides with edits that are promised, and its own days are named', async () => {
  const { jobs } = await year.call<{ jobs: { id: string; title: string }[] }>('jobs.list');
  const curling = jobs.find(({ title }) => title === 'Curling championship');
  const { result } = await year.call<{ result: FitResult }>('fit.check', { jobId: curling?.id });
  const edits = result.findings.filter(({ kind }) => kind === 'edit late');
  expect(edits.map(({ concerns }) => concerns[0]?.title)).toContain('Bakers’ trade congress');
  for (const { sentence } of edits) expect(sentence).toMatch(/What takes its time: .*\d days away for this job/);
  // Those that are due first are given their lifts.
  const lifted = edits.filter(({ lifts }) => lifts.length > 0);
  expect(lifted).toHaveLength(Math.min(3, edits.length));
  for (const { lifts } of lifted) expect(lifts.map(({ kind }) => kind)).toEqual(expect.arrayContaining(['later date', 'hire editor']));
});

test('each edit that is open has its clock on the Desk as soon as it bites', async () => {
  const { plan } = await year.call<{ plan: EditPlan }>('deliverables.plan');
  const { clocks } = await year.call<{ clocks: { kind: string; id: string; late: boolean }[] }>('desk.see');
  const edits = clocks.filter(({ kind }) => kind === 'edit');
  for (const { deliverableId } of late(plan)) expect(edits).toContainEqual(expect.objectContaining({ id: `edit:${deliverableId}` }));
});

test('what past edits took is on record, so that the next quote knows better', async () => {
  const { templates } = await year.call<{ templates: { id: string; name: string }[] }>('templates.list');
  const film = templates.find(({ name }) => name === 'Film');
  const { past } = await year.call<{ past: Past }>('spent.past', { templateId: film?.id });
  expect(past.edits).toBeGreaterThan(10);
  expect(past.perMinute?.most).toBeGreaterThan(past.perMinute?.least ?? Infinity);
});
