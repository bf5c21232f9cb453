import { expect, test } from 'vitest';
import { createDrafter } from '../../models/draft/draftMesh.ts';
import { DesignError } from '../../src/design/problem.ts';
import { draft } from '../../workers/draft.ts';
import { draftService } from '../../workers/draftService.ts';
import type { DraftCall, Reply } from '../../workers/protocol.ts';
import { serve } from '../../workers/serve.ts';
import { designText } from '../support/change.ts';
import { fakeLine } from './fakeLine.ts';

const drafter = await createDrafter();

test('a draft has a mesh, its volume and how long it took', () => {
  const { mesh, volumeMm3, ms } = draft(drafter, designText(), 'drilled');
  expect(mesh.triangles.length / 3).toBeGreaterThan(1000);
  expect(volumeMm3).toBeGreaterThan(10_000);
  expect(ms).toBeGreaterThan(0);
});

test('reamed holes take more wood than drilled ones', () => {
  const volume = (holes: 'drilled' | 'reamed') => draft(drafter, designText(), holes).volumeMm3;
  expect(volume('reamed')).toBeLessThan(volume('drilled') - 10);
});

test('a design that cannot be made is refused with its problems', () => {
  const design = designText();
  const thick = { ...design, top: { ...design.top, thickness: 200 } };
  expect(() => draft(drafter, thick, 'drilled')).toThrow(DesignError);
});

test('100 drafts asked for at once: the last is answered, each answer with its own mesh, nobody left without a word', async () => {
  const replies: Reply<DraftCall>[] = [];
  let done = (): void => {};
  const last = new Promise<void>((resolve) => {
    done = resolve;
  });
  const line = fakeLine<DraftCall>((reply) => {
    replies.push(reply);
    if ('id' in reply && reply.id === 100 && reply.kind !== 'taken') done();
  });
  void serve(line.port, async () => draftService(drafter));
  const design = designText();
  for (let id = 1; id <= 100; id++) {
    const thickness = 9 + id / 100;
    line.post({
      id,
      call: 'draft',
      ask: { design: { ...design, top: { ...design.top, thickness } }, holes: 'reamed' },
    });
  }
  await last;
  const answers = replies.filter((reply) => reply.kind === 'answer');
  for (const { id, answer } of answers) {
    let top = 0;
    for (let i = 2; i < answer.mesh.positions.length; i += 3)
      top = Math.max(top, answer.mesh.positions[i] ?? 0);
    expect(top, `the height of draft ${id}`).toBeCloseTo(9 + id / 100, 2);
  }
  expect(answers.at(-1)?.id).toBe(100);
  expect(replies.filter((r) => r.kind === 'refused').length + answers.length).toBe(100);
});
