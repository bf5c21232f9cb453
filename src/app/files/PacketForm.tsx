import type { Holes } from '../../../models/curves/curves.ts';
import { orderFor } from '../../making/orderFor.ts';
import { usePartSource } from '../part/partContext.ts';
import { dayText, today } from '../sheets/today.ts';
import { judge } from '../store/judge.ts';
import type { OrderText } from '../store/state.ts';
import { useApp, useAppStore } from '../store/useApp.ts';
import type { FilesProps } from './filesProps.ts';
import { makeable } from './makeable.ts';
import { OrderField } from './OrderField.tsx';
import { packetOf } from './packetOf.ts';
import { readOrderText } from './readOrderText.ts';

/** Everything that a CNC shop needs, in one ZIP, and what it is asked for. */
export function PacketForm({ holes, off, save }: FilesProps & { readonly holes: Holes }) {
  const store = useAppStore();
  const { client } = usePartSource();
  const text = useApp(({ session }) => session.order);
  const read = readOrderText(text, holes, dayText(today()));
  const made = useApp(({ history }) => {
    const { accepted } = judge(history.present);
    return accepted ? orderFor(accepted.design, { holes }).holes : holes;
  });
  const type = (part: Partial<OrderText>) => store.setSession({ order: { ...text, ...part } });
  const common = { problems: read.ok ? [] : read.problems };
  const write = () =>
    read.ok &&
    save('the order packet', () =>
      packetOf(client, makeable(store), read.order, store.getState().session.papers),
    );
  return (
    <section className="packet-form">
      <h3>The order packet</h3>
      <p>
        One ZIP to send to a CNC shop: STEP, STL, 3MF, DXF, the drawing, a job note with what matters and why,
        the table of dimensions, the design, and a list of all with their check sums.
      </p>
      <div className="order-fields">
        <OrderField {...common} name="quantity" label="Pieces">
          {(input) => (
            <input
              {...input}
              type="text"
              inputMode="numeric"
              value={text.quantity}
              onChange={(event) => type({ quantity: event.target.value })}
            />
          )}
        </OrderField>
        <OrderField {...common} name="deadline" label="Wanted by">
          {(input) => (
            <input
              {...input}
              type="date"
              min={dayText(today())}
              value={text.deadline}
              onChange={(event) => type({ deadline: event.target.value })}
            />
          )}
        </OrderField>
        <OrderField {...common} name="sandingAllowance" label="Left on the top for sanding, mm">
          {(input) => (
            <input
              {...input}
              type="text"
              inputMode="decimal"
              value={text.sandingAllowance}
              onChange={(event) => type({ sandingAllowance: event.target.value })}
            />
          )}
        </OrderField>
        <OrderField {...common} name="remarks" label="Remarks">
          {(input) => (
            <textarea
              {...input}
              rows={2}
              value={text.remarks}
              onChange={(event) => type({ remarks: event.target.value })}
            />
          )}
        </OrderField>
      </div>
      <div className="file-line">
        <small>
          {made === holes
            ? `Holes as ${holes}, as chosen above.`
            : `Holes as ${made}: in this design the reamer takes nothing off.`}{' '}
          Paper and units are those of the sheets.
        </small>
        <button type="button" className="main" disabled={off || !read.ok} onClick={write}>
          Write the order packet
        </button>
      </div>
    </section>
  );
}
