import type { WrittenFile } from '../../../workers/protocol.ts';
import { sayProblem } from '../../design/problem.ts';
import { safeName } from '../../files/safeName.ts';
import { fingerprint } from '../../sheets/fingerprint.ts';
import { benchOf } from '../making/benchOf.ts';
import { jobIn } from '../making/jobIn.ts';
import { loadPress } from '../sheets/loadPress.ts';
import type { Accepted } from '../store/judge.ts';
import type { Session } from '../store/state.ts';

/** The job by hand as PDF, for the workshop that stands under Making. Rejects when the workshop can't be so. */
export async function jobByHandPdf(
  accepted: Accepted,
  { benches, papers }: Pick<Session, 'benches' | 'papers'>,
): Promise<WrittenFile> {
  const { name } = accepted.design.guitar;
  const { workshop: typed } = benchOf(benches, fingerprint(accepted.text), name);
  const job = jobIn(accepted, typed);
  if (!job.ok)
    throw new Error(`Mend the workshop under Making first. ${job.problems.map(sayProblem).join(' ')}`);
  const press = await loadPress();
  return {
    name: `${safeName(name)}_job-by-hand.pdf`,
    bytes: await press.jobPdf(accepted, job.workshop, papers),
  };
}
