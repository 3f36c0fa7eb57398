import { runOf } from "./run.ts";
import { pressed } from "./session.ts";
import { keepSession, keptSession } from "./use-session.ts";

/** An alarm indoors ends the sweep under way; one that is over already stays as it ended. */
export function stopForAlarm(): void {
  const session = keptSession();
  if (!session) return;
  const { stopped, phase } = runOf(session);
  if (stopped || phase === "done") return;
  keepSession(pressed(session, { is: "alarm", at: Date.now() }));
}
