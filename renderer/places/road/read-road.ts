/** What the store says of the road, read for drawing, and what of it lies in the days that are shown. */
import type { BusyBar, EditLane, HandBar, KitBar, Stringline } from '../../../core/contract/road.ts';
import { epochOf } from '../../../core/time/read.ts';
import { meets, stripOf, timed, type Span } from '../../parts/stringline/strip.ts';
import type { RoadStrip } from './road-drawing.tsx';

type Said = { stringline: Stringline; kit: KitBar[]; hands: HandBar[]; busy: BusyBar[]; edit: EditLane; laidAt: string | null };
/** What lies in the days that are shown. */
export type Seen = Pick<Said, 'stringline' | 'kit' | 'hands' | 'busy' | 'edit'>;

export function readForDrawing({ stringline, kit, hands, busy, edit, laidAt }: Said): RoadStrip {
  return {
    strip: stripOf(stringline),
    bars: kit.map(timed),
    hands: hands.map(timed),
    busy: busy.map(timed),
    edit: { ...edit, days: edit.days.map(timed) },
    laidAt: laidAt === null ? null : epochOf(laidAt),
  };
}

export function within({ stringline, kit, hands, busy, edit }: Said, shown: Span): Seen {
  const seen = <T extends { start: string; end: string }>(parts: readonly T[]): T[] => parts.filter((part) => meets(timed(part), shown));
  return {
    stringline: {
      ...stringline,
      jobs: stringline.jobs
        .map((job) => ({ ...job, blocks: seen(job.blocks), moves: seen(job.moves), rests: seen(job.rests) }))
        .filter(({ blocks, moves, rests }) => blocks.length + moves.length + rests.length > 0),
      clashes: seen(stringline.clashes),
    },
    kit: seen(kit),
    hands: seen(hands),
    busy: seen(busy),
    edit: { ...edit, days: seen(edit.days) },
  };
}
