import { scheduleInWords, usualSchedule } from '@tiegel/contract/terms';
import { expect, test } from 'vitest';
import { scheduleDraftOf, scheduleFault, scheduleOf } from '../../src/schedule/scheduleDraft.ts';
import { beginInWords, startInWords } from '../../src/schedule/scheduleInWords.ts';

const night = {
  hours: { zone: 'Europe/Berlin', from: '20:00', to: '06:00' },
  priority: 'last',
} as const;

test('what is written is the schedule, and comes back from it', () => {
  expect(scheduleOf(scheduleDraftOf(night))).toEqual(night);
  expect(scheduleOf(scheduleDraftOf(usualSchedule))).toEqual(usualSchedule);
  expect(scheduleOf({ ...scheduleDraftOf(night), zone: ' Asia/Tokyo ' }).hours?.zone).toBe('Asia/Tokyo');
});

test('a missing time and an unknown zone are told with what would be right; without hours neither matters', () => {
  const draft = scheduleDraftOf(night);
  expect(scheduleFault(draft)).toBeNull();
  expect(scheduleFault({ ...draft, to: '' })).toMatch(/both times of day, such as 20:00/);
  expect(scheduleFault({ ...draft, zone: 'Middle/Earth' })).toMatch(/“Middle\/Earth”.*Europe\/Berlin/);
  expect(scheduleFault({ ...draft, limited: false, to: '', zone: '' })).toBeNull();
});

test('the button and the line say what differs from starting at once', () => {
  expect(startInWords(usualSchedule)).toBe('Start search');
  expect(startInWords(night)).toBe('Start search, from 20:00 to 06:00, when nothing else waits');
  expect(scheduleInWords(usualSchedule)).toBe('at any time, in turn with the others');
});

// 2026-11-28 in Berlin is UTC+1.
test('whether it begins now or waits, and until when', () => {
  expect(beginInWords(usualSchedule, new Date())).toBeNull();
  expect(beginInWords(night, new Date('2026-11-28T20:30:00Z'))).toMatch(/begins now and rests at 06:00/);
  const waits = beginInWords(night, new Date('2026-11-28T12:00:00Z'));
  const at = new Date('2026-11-28T19:00:00Z');
  expect(waits).toContain(`${String(at.getHours()).padStart(2, '0')}:00`);
  expect(waits).toMatch(/^It waits until 2026-11-2[89]/);
});
