/** Words about simulated lies, on the bands page. */
export const poisoningStudy = {
  title: "What lies do to the average",
  intro:
    "Invented atlases, and somebody who sends tunes that are wrong on purpose: 10 to 35 % too lean or too rich, from high up or from low down. New owners wait six days before their tunes count, a few a week; a version that moves the average by 2 % in a week is held back. The table says how far the published average moved at any time, at five elevations and both powers.",
  liars: {
    "fresh keys": "One sender, 29 new keys in a week",
    "one key": "One sender, 29 tunes under one key in a week",
    "many keys": "One sender, 300 new keys in a week",
    "five weeks": "One sender, 145 new keys in five weeks",
    "counted at once": "One sender, 29 new keys in a week, if nobody waited",
    "three networks": "One sender in three networks, 29 new keys in a week",
    hundred: "100 senders, a new key each in a week",
  },
  who: "Who lies",
  honest: "Honest owners",
  attacks: "Attacks",
  median: "Average moved, %, median",
  most: "At most, %",
  goal: "Goal, %",
  below: (pct: string) => `below ${pct}`,
  noGoal: "none",
  heldBack: "Held back in",
  newcomers: "How long honest newcomers wait",
  newcomersIntro:
    "Until the published average knows their tune. Few may come to count in a week, so many at once wait longer, and liars of many networks who came before them make the line longer still.",
  aWeek: "Newcomers a week",
  meanwhile: "Liars meanwhile",
  days: "Days, median",
  mostDays: "Days, at most",
  inAWeek: "Within a week",
  of: (n: string, all: string) => `${n} of ${all}`,
};
