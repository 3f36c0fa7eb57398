import { ENDS } from "../../model/end.ts";
import { t } from "../texts/app.ts";
import { onsite as words } from "../texts/onsite.ts";
import { format } from "../units.ts";
import { decimalsOf, hz } from "./figures.ts";
import type { Session } from "./session.ts";

/** The settings that the sweep began from, as far as the owner gave them; nothing is filled in. */
export function PutBack({ session: { plan } }: { session: Session }) {
  const fans = ENDS.every((end) => plan.ends[end].given_rpm !== undefined);
  return (
    <>
      <table class="put-back">
        <thead>
          <tr>
            <th scope="col">{words.done.end}</th>
            <th scope="col">{words.stopped.pump}</th>
            {fans && <th scope="col">{words.stopped.fan}</th>}
          </tr>
        </thead>
        <tbody>
          {ENDS.map((end) => {
            const { before_Hz, given_rpm } = plan.ends[end];
            return (
              <tr key={end}>
                <th scope="row">{t[end]}</th>
                <td class="rate">{hz(before_Hz, decimalsOf(plan.step_Hz))}</td>
                {fans && <td class="rate">{format(given_rpm as number)}</td>}
              </tr>
            );
          })}
        </tbody>
      </table>
      <p class="note">{words.stopped.fanKept}</p>
    </>
  );
}
