import type { MeltEntry } from '@tiegel/contract';
import { openStore } from '@tiegel/store';
import { afterAll, expect, test } from 'vitest';
import { openChargeSheets, openMelts } from '../../src/laboratory.ts';

const store = openStore({ file: null, columns: [] });
afterAll(() => store.close());
const melts = openMelts(store.melts, openChargeSheets(store.chargeSheets));

const entry: MeltEntry = {
  ...{ name: 'First trial', date: '2026-11-25', charge: null, ingot: 19.9, process: 'arc melting' },
  weighed: [
    { material: 'Fe', mass: 10 },
    { material: 'Ni', mass: 10 },
  ],
  ...{
    anneal: null,
    phases: ['FCC'],
    methods: ['X-ray diffraction'],
    hardness: null,
    density: 1.5,
    notes: '',
  },
};

test('what follows from a melt is worked out once for each version, and what stands beside it is as it is now', () => {
  const { id } = melts.record(entry);
  const [first] = melts.list();
  expect(first!.doubts.length).toBeGreaterThan(0);
  expect(melts.list()[0]!.doubts).toBe(first!.doubts);
  const attachment = { id: store.melts.newAttachmentId(), name: 'scan', type: 'text/plain', size: 1 };
  store.melts.attach(id, attachment, '2026-11-25T12:00:00Z', 5);
  expect(melts.view(id).attachments).toHaveLength(1);
  melts.change(id, 1, { ...entry, phases: ['BCC'], density: null });
  expect(melts.view(id)).toMatchObject({ version: 2, phaseClass: 'bcc', doubts: [], density: null });
  expect(melts.remove(id).deletedAt).not.toBeNull();
});

test('a version that somebody else wrote into the database is told as it is', () => {
  const { id } = melts.record(entry);
  store.melts.change(id, 1, { ...entry, phases: ['BCC'] }, '2026-11-26T12:00:00Z');
  expect(melts.view(id)).toMatchObject({ version: 2, label: 'BCC', phaseClass: 'bcc' });
});
