import fc from 'fast-check';
import { expect, onTestFinished, test, vi } from 'vitest';
import { type Hours, isWithin, isZone, nextStart } from '../../src/index.ts';

const night: Hours = { zone: 'Europe/Berlin', from: '20:00', to: '06:00' };
const at = (text: string) => new Date(text);

test.each([
  // Central European Time in January, summer time in July (EU directive 2000/84/EC).
  ['2026-01-15T18:59:00Z', false],
  ['2026-01-15T19:00:00Z', true],
  ['2026-01-16T04:59:00Z', true],
  ['2026-01-16T05:00:00Z', false],
  ['2026-07-15T17:59:00Z', false],
  ['2026-07-15T18:00:00Z', true],
])('%s lies within the night of Berlin: %s', (instant, within) => {
  expect(isWithin(night, at(instant))).toBe(within);
});

test('the day itself, and all day', () => {
  const day = { ...night, from: '08:00', to: '17:00' };
  expect(isWithin(day, at('2026-01-15T07:00:00Z'))).toBe(true);
  expect(isWithin(day, at('2026-01-15T16:00:00Z'))).toBe(false);
  expect(isWithin({ ...night, to: '20:00' }, at('2026-01-15T12:00:00Z'))).toBe(true);
});

// On 2026-03-29 the clocks of Berlin went from 02:00 to 03:00, on 2026-10-25 from 03:00 back to 02:00.
test('where the clock skips the beginning it begins after the skip; where it repeats, with the first', () => {
  const small = { ...night, from: '02:30', to: '05:00' };
  expect(nextStart(small, at('2026-03-28T23:00:00Z'))).toEqual(at('2026-03-29T01:00:00Z'));
  expect(nextStart(small, at('2026-10-24T22:00:00Z'))).toEqual(at('2026-10-25T00:30:00Z'));
});

test('the next beginning is the first minute within', () => {
  expect(nextStart(night, at('2026-01-15T12:00:30Z'))).toEqual(at('2026-01-15T19:00:00Z'));
  expect(nextStart(night, at('2026-01-15T20:00:00Z'))).toEqual(at('2026-01-15T20:00:00Z'));
  const time = fc
    .tuple(fc.nat(23), fc.nat(59))
    .map((parts) => parts.map((part) => `${part}`.padStart(2, '0')).join(':'));
  const zone = fc.constantFrom(
    'Europe/Berlin',
    'America/New_York',
    'Asia/Kolkata',
    'Australia/Lord_Howe',
    'UTC',
  );
  const instant = fc.date({
    min: at('2026-01-01T00:00:00Z'),
    max: at('2027-01-01T00:00:00Z'),
    noInvalidDate: true,
  });
  fc.assert(
    fc.property(fc.record({ zone, from: time, to: time }), instant, (hours, now) => {
      const next = nextStart(hours, now);
      expect(isWithin(hours, next)).toBe(true);
      expect(next.getTime() - now.getTime()).toBeLessThan(49 * 3600e3);
      const minuteBefore = new Date(next.getTime() - 60_000);
      if (minuteBefore >= now) expect(isWithin(hours, minuteBefore)).toBe(false);
    }),
    { numRuns: 60 },
  );
});

/** As its definition says: minute by minute. */
function walked(hours: Hours, instant: Date): Date {
  for (let minute = Math.ceil(instant.getTime() / 60_000); ; minute += 1) {
    const one = new Date(minute * 60_000);
    if (isWithin(hours, one)) return one;
  }
}

// Clocks of Lord Howe change by half an hour, those of Troll by two; Samoa had no 2011-12-30 (IANA time zone database).
test.each([
  ['Europe/Berlin', '2026-03-28T00:00:00Z'],
  ['Europe/Berlin', '2026-10-24T00:00:00Z'],
  ['Australia/Lord_Howe', '2026-04-03T14:00:00Z'],
  ['Australia/Lord_Howe', '2026-10-02T14:00:00Z'],
  ['Antarctica/Troll', '2026-03-28T00:00:00Z'],
  ['Pacific/Apia', '2011-12-29T08:00:00Z'],
])('where the clock of %s is changed, after %s, it is the first minute too', (zone, begin) => {
  for (let hour = 0; hour < 48; hour += 5) {
    const instant = new Date(at(begin).getTime() + hour * 3600e3 + 12_345);
    for (const [from, to] of [
      ...[['02:30', '02:45'] as const, ['01:59', '02:00'] as const, ['03:00', '03:01'] as const],
      ...[['23:30', '01:30'] as const, ['12:00', '11:00'] as const],
    ]) {
      expect(nextStart({ zone, from, to }, instant)).toEqual(walked({ zone, from, to }, instant));
    }
  }
});

test('a beginning that is hours ahead is found with a few looks at the clock', () => {
  const looks = vi.spyOn(Intl.DateTimeFormat.prototype as { readonly format: unknown }, 'format', 'get');
  onTestFinished(() => looks.mockRestore());
  nextStart(night, at('2026-01-15T05:00:00Z'));
  expect(looks.mock.calls.length).toBeLessThan(10);
  nextStart({ ...night, from: '02:30', to: '03:30' }, at('2026-03-28T04:00:00Z'));
  expect(looks.mock.calls.length).toBeGreaterThan(5);
  expect(looks.mock.calls.length).toBeLessThan(50);
});

test('zones are known by their IANA names', () => {
  expect(isZone('Europe/Berlin')).toBe(true);
  expect(isZone('Middle/Earth')).toBe(false);
});
