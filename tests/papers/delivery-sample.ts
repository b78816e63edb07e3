/**
 * An invented delivery to make papers from.
 */
import { createHash } from 'node:crypto';
import type { HandedFile } from '../../core/contract/handovers.ts';
import type { DeliveryNoteInput } from '../../core/handovers/note.ts';
import { bill } from './invoice-sample.ts';

/** Files of a delivery, each unlike its neighbours; the first are the films, the others stills in folders. */
export function handedFiles(count: number): HandedFile[] {
  return Array.from({ length: count }, (_, at) => ({
    name:
      at === 0
        ? 'Curling championship, highlight film, master.mov'
        : at % 4 === 0
          ? `Social cuts/Day ${(at % 5) + 1}/Vertical ${at}.mp4`
          : `Stills/Ceremony ${String(at).padStart(3, '0')}.png`,
    bytes: at === 0 ? 41_203_441_112 : 1_000_003 * (at + 1),
    hash: createHash('md5').update(String(at)).digest('hex'),
  }));
}

export function delivery(changes: Partial<DeliveryNoteInput> = {}, files = handedFiles(3)): DeliveryNoteInput {
  return {
    sender: bill().sender,
    client: { name: 'Lakehead Curling Association', contact: 'Ilse Marrow' },
    job: { title: 'Provincial curling championship', lines: ['Thunder Bay, 6 to 10 December 2026'] },
    deliverable: {
      name: 'Highlight film',
      format: {
        width: 1920,
        height: 1080,
        rate: '29.97 drop',
        codec: 'H.264, 20 Mb/s',
        loudness: '−16 LUFS, true peak −1 dBTP',
        captions: 'English, as a file of its own',
        other: '',
      },
      agreedDue: '2026-12-18',
      due: '2026-12-23',
    },
    handOver: {
      how: 'link',
      where: 'https://files.lakeline.example/curling-2026/highlight?key=5d1c-88ab-90ef-17aa-c3d2-4b6f',
      on: '2026-12-22',
      files,
      originals: { kind: 'kept until', until: '2027-03-22' },
      note: '',
    },
    moves: [{ cut: 'rough cut', dueBack: '2026-12-11', came: '2026-12-16', lost: 3, from: '2026-12-18', to: '2026-12-23' }],
    madeAt: '2026-12-22T16:30:00Z',
    ...changes,
  };
}
