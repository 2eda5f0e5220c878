import { useMutation, useQueryClient } from '@tanstack/react-query';
import { numberOfCharge } from '@tiegel/charge';
import type { MeltEntry, MeltView } from '@tiegel/contract';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { postOnce } from '../server/postOnce.ts';
import { request } from '../server/request.ts';
import { forgetSent } from '../server/sentKey.ts';
import { keepMeltDraft } from './meltDraft.ts';
import { refreshMelts } from './refreshMelts.ts';

const [storage, form] = ['localStorage', 'melt'] as const;

/**
 * Records a melt once (postOnce). What an earlier press without an answer had recorded is `before`, and a person
 * says whether that melt is changed or another one recorded.
 * @param place where the form is kept, emptied once the melt is recorded
 */
export function useRecordMelt(place: string, entry: MeltEntry) {
  const client = useQueryClient();
  const [, navigate] = useLocation();
  const [before, setBefore] = useState<MeltView | null>(null);

  const finish = async ({ id }: MeltView) => {
    forgetSent(storage, form);
    keepMeltDraft(place, null);
    await refreshMelts(client);
    navigate(`/melts/${id}`);
  };
  const recording = useMutation({
    mutationFn: () =>
      postOnce<MeltEntry, MeltView>({ storage, form, path: '/melts', body: entry, isOf: isRecordOf }),
    onSuccess: ({ kept, isBefore }) => (isBefore ? setBefore(kept) : finish(kept)),
  });
  const changing = useMutation({
    mutationFn: ({ id, version }: MeltView) =>
      request<MeltView>(`/melts/${encodeURIComponent(id)}`, {
        method: 'PUT',
        body: JSON.stringify({ ...entry, version }),
      }),
    onSuccess: finish,
  });
  return {
    recording,
    changing,
    before,
    /** Records what stands in the form beside the melt of before. */
    recordAnother() {
      forgetSent(storage, form);
      setBefore(null);
      recording.mutate();
    },
  };
}

/** Whether a melt is what an entry says; the server trims its name and spells the number of a sheet its own way. */
function isRecordOf(melt: MeltView, entry: MeltEntry): boolean {
  const plain = (one: MeltEntry) => ({
    ...one,
    name: one.name.trim(),
    charge: one.charge === null ? null : numberOfCharge(one.charge),
  });
  const [recorded, sent] = [plain(melt), plain(entry)] as Record<string, unknown>[];
  return Object.keys(sent!).every((key) => JSON.stringify(recorded![key]) === JSON.stringify(sent![key]));
}
