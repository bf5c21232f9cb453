import type { WrittenFile } from '../../../workers/protocol.ts';
import type { Order } from '../../making/order.ts';
import { orderFor } from '../../making/orderFor.ts';
import { withAllowance } from '../../making/withAllowance.ts';
import type { Client } from '../client/client.ts';
import { loadPress } from '../sheets/loadPress.ts';
import { today } from '../sheets/today.ts';
import type { Accepted } from '../store/judge.ts';
import type { PapersChoice } from '../store/state.ts';

/**
 * The order packet of a design, its solid from the client. Rejects with `DesignError` when the design can't carry the
 * allowance, with `ClientError` when the solid can't be had.
 */
export async function packetOf(
  client: Client,
  accepted: Accepted,
  order: Order,
  choice: PapersChoice,
): Promise<WrittenFile> {
  const { text } = withAllowance(accepted, order.sandingAllowance);
  const { holes } = orderFor(accepted.design, order);
  const { bytes: step } = await client.file(text, { format: 'step', holes, written: today() });
  const { bytes: stl } = await client.file(text, { format: 'stl', holes });
  const mesh = await client.mesh(text, holes);
  const press = await loadPress();
  return press.packet(accepted, order, choice, { step, stl, mesh });
}
