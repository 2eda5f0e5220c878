import { chargeRequestOf, chargeSheet } from '@tiegel/charge';
import type { MeltEntry } from '@tiegel/contract';
import { openStore } from '@tiegel/store';
import { afterAll, expect, test } from 'vitest';
import { openChargeSheets, openMelts } from '../../src/laboratory.ts';

const store = openStore({ file: null, columns: [] });
afterAll(() => store.close());
const sheets = openChargeSheets(store.chargeSheets);
const melts = openMelts(store.melts, sheets);

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

test('what an earlier release kept without reading it is told as that release did, and refused once it is changed', () => {
  const asked = chargeRequestOf({ composition: { Fe: 50, Ni: 50 }, mass: 20, resolution: 0.001 }, null);
  const { number } = sheets.save(chargeSheet(asked), { name: '', request: {}, prices: null, pairs: [] });
  const plain = { ...entry, charge: number };
  const weighed = plain.weighed.map((row) => (row.material === 'Ni' ? { ...row, purity: 0.997 } : row));
  const { id } = store.melts.create({ ...plain, weighed }, '2026-11-25T12:00:00Z');
  const { composition } = melts.view(id);
  expect(composition).toEqual(melts.record(plain).composition);
  expect(melts.list().map((one) => one.id)).toContain(id);
  expect(() => melts.change(id, 1, { ...plain, weighed })).toThrow(/The purity of "Ni" is 0\.997 %/);
});
