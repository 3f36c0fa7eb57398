import type { Services } from "../context.ts";
import { api } from "../declare.ts";
import { stewardOnly } from "../steward-token.ts";
import { decisionRoutes } from "./steward/decisions.ts";
import { newOwnerRoutes } from "./steward/new-owners.ts";
import { publicationRoutes } from "./steward/publication.ts";
import { stewardsTuneRoutes } from "./steward/tunes.ts";

/** What whoever looks after the atlas sees and decides. Without a token in the configuration there is none of it. */
export function stewardRoutes(services: Services) {
  const { stewardToken } = services;
  const app = api();
  if (!stewardToken) return app;
  app.openAPIRegistry.registerComponent("securitySchemes", "steward", {
    type: "http",
    scheme: "bearer",
    description: "The steward's token",
  });
  app.use("/steward/*", stewardOnly(stewardToken, services));
  for (const routes of [stewardsTuneRoutes, decisionRoutes, newOwnerRoutes, publicationRoutes])
    app.route("/", routes(services));
  return app;
}
