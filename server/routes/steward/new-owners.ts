import { z } from "zod";
import { stewardsName } from "../../../db/steward.ts";
import {
  COUNTED_BY_STEWARD,
  letCountBySteward,
  ownersOfWaitingSizes,
  tunesOfContributors,
  type Waiting,
  waitingByPseudonym,
  waitingInTurn,
} from "../../../db/waiting.ts";
import type { Services } from "../../context.ts";
import { countedAnswer, waitingAnswer } from "../../contract/steward-answers.ts";
import { PAGE, reasonBody, waitingQuery } from "../../contract/steward-requests.ts";
import { api, bearer, declareRoute, json, jsonBody } from "../../declare.ts";
import { OWNERS_OF_SIZE } from "../../new-keys.ts";
import { RequestProblem } from "../../problem.ts";

const waitingRoute = declareRoute({
  method: "get",
  path: "/steward/waiting",
  summary:
    "New contributors whose tunes do not count yet, in the order in which they will; and heater sizes that wait for owners",
  security: bearer.steward,
  request: { query: waitingQuery },
  responses: { 200: json(waitingAnswer) },
  problems: [401, 422, 429],
});

const countRoute = declareRoute({
  method: "post",
  path: "/steward/contributors/{pseudonym}/count",
  summary:
    "Let the tunes of a new contributor, or of an owner of a heater size that waits, count now, and say why",
  security: bearer.steward,
  request: { params: z.object({ pseudonym: z.string() }), body: jsonBody(reasonBody) },
  responses: { 200: json(countedAnswer) },
  problems: [400, 401, 404, 413, 415, 422, 429, 503, 507],
});

/** So many owners of each heater size that waits are told. It waits for its third who is not new, and the new ones are listed above. */
const OWNERS_MOST = 20;

/** Somebody's place in the order of turns, as a text for the next page. */
const placeOf = ({ crowded, since, contributor }: Waiting) =>
  [crowded ? 1 : 0, since, stewardsName(contributor)].join(".");

/** The same read again: behind all whose hash begins with that name, for hashes are written in 0 to 9 and a to f. */
function behind(place: string): { behind: Waiting } {
  const [crowded, since = "", name] = place.split(".");
  return { behind: { crowded: crowded === "1", since, contributor: `${name}g` } };
}

/** New contributors and heater sizes, which wait, and letting one count. */
export function newOwnerRoutes({ db, commit, now, afterWrite }: Services) {
  return api("decision")
    .openapi(waitingRoute, async (c) => {
      const { after, limit = PAGE } = c.req.valid("query");
      // One more than shown tells whether there is a next page.
      const found = await waitingInTurn(db, limit + 1, after ? behind(after) : undefined);
      const shown = found.slice(0, limit);
      const last = found.length > limit ? shown.at(-1) : undefined;
      const waiting = shown.map(({ contributor, since, crowded }) => ({
        contributor: stewardsName(contributor),
        since,
        crowded,
      }));
      const owners = await ownersOfWaitingSizes(db, OWNERS_MOST);
      const sizes = [...Map.groupBy(owners, ({ heat_kW }) => heat_kW)].map(([heat_kW, of]) => ({
        heat_kW,
        owners_needed: OWNERS_OF_SIZE,
        owners: of.map(({ contributor, tunes, waits }) => ({
          contributor: stewardsName(contributor),
          tunes,
          waits,
        })),
      }));
      return c.json({ waiting, next: last ? placeOf(last) : null, sizes }, 200);
    })
    .openapi(countRoute, async (c) => {
      const { reason } = c.req.valid("json");
      const { pseudonym } = c.req.valid("param");
      const contributor = /^[0-9a-f]{16}$/.test(pseudonym)
        ? await waitingByPseudonym(db, pseudonym)
        : undefined;
      if (contributor === undefined) {
        throw new RequestProblem(
          404,
          "No contributor waits under this pseudonym. GET /api/steward/waiting names those who do.",
        );
      }
      const reasons = JSON.stringify([
        { code: COUNTED_BY_STEWARD, field: "contributor", sentence: reason },
      ]);
      const today = now().toISOString().slice(0, 10);
      await commit(letCountBySteward(db, contributor, reasons, today));
      const tunes = await tunesOfContributors(db, [contributor]);
      afterWrite(c);
      return c.json({ contributor: pseudonym, tunes: tunes.length }, 200);
    });
}
