import { join } from "node:path";
import { goodTune, openTestAtlas, post } from "../server/atlas.ts";

/** What an atlas answered whose files may grow no further. */
export interface WrittenTo {
  taken: number;
  /** Statuses of the first tunes that were refused. */
  refused: number[];
  detail: string;
  /** What whoever runs it was told of. */
  told: string[];
  /** Tunes that are there. */
  stored: number;
}

// What is printed of it is not looked at.
console.error = () => {};
const told: string[] = [];
const atlas = await openTestAtlas({
  file: join(process.argv[2] as string, "atlas.db"),
  onTrouble: ({ event }) => told.push(event),
});
let taken = 0;
let answer = await post(atlas.app, goodTune(0));
for (; answer.status === 201; taken++) answer = await post(atlas.app, goodTune(taken + 1));
const { detail } = await answer.json();
const again = await post(atlas.app, goodTune(0));
const { tunes } = await (await atlas.app.request("/api/health")).json();
const written: WrittenTo = {
  taken,
  refused: [answer.status, again.status],
  detail,
  told,
  stored: tunes,
};
console.log(JSON.stringify(written));
// A refresh of the fit that finds no room goes on by itself.
process.exit(0);
