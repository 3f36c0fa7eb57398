/** What whoever runs an atlas should hear of without asking, beside alarms; and what they are told. */
const SENTENCES = {
  surge:
    "Many more new contributors came today than usual. They wait thirty days; a steward may let those count who are known.",
  flood: "Far more tunes come in than usual. Each needs a proof of work until fewer come.",
  "storage short":
    "There is too little room for new tunes, so they are refused until somebody makes more.",
  "storage failing":
    "The disk takes nothing that is written: it fails, or may only be read. New tunes and withdrawals are refused until somebody mends it.",
  "fit failing":
    "No fit could be made for ten minutes or longer. The last published one answers; the log says what went wrong.",
};
export type Trouble = keyof typeof SENTENCES;

export interface TroubleNews {
  event: Trouble;
  sentence: string;
}

/** Tells of each trouble once a day at most, however often it is met. */
export function oncePerDay(
  tell: (news: TroubleNews) => void,
  now: () => Date,
): (event: Trouble) => void {
  const told = new Map<Trouble, string>();
  return (event) => {
    const today = now().toISOString().slice(0, 10);
    if (told.get(event) === today) return;
    told.set(event, today);
    tell({ event, sentence: SENTENCES[event] });
  };
}
