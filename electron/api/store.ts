import { os } from './os.ts';

export const store = {
  state: os.store.state.handler(({ context }) => {
    const { folder, schema, sqlite } = context.store;
    const snapshots = context.store.snapshots();
    return { folder, schema, sqlite, lastSnapshot: snapshots[0] ?? null, snapshots: snapshots.length, version: context.programVersion };
  }),
  snapshot: os.store.snapshot.handler(async ({ context }) => ({ snapshot: await context.store.snapshot('asked', context.now()) })),
  snapshots: os.store.snapshots.handler(({ context }) => ({ snapshots: context.store.snapshots() })),
};
