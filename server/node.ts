import { mkdir } from "node:fs/promises";
import type { ServerResponse } from "node:http";
import { isIPv6 } from "node:net";
import { setTimeout } from "node:timers/promises";
import { type ServerType, serve } from "@hono/node-server";
import { getConnInfo } from "@hono/node-server/conninfo";
import type { Hono } from "hono";
import { claimDatabase } from "../db/claim.ts";
import type { Database } from "../db/database.ts";
import { findSecretCheck } from "../db/facts.ts";
import { groupCommit } from "../db/group-commit.ts";
import { type OpenDatabase, openDatabase } from "../db/open.ts";
import { causesOf } from "../db/storage-trouble.ts";
import { countTunes } from "../db/tunes.ts";
import { AlarmWebhook } from "./alarm-webhook.ts";
import { createApp } from "./app.ts";
import { buildMissing } from "./build-missing.ts";
import { clientAddress } from "./client-address.ts";
import { fitsInThread } from "./fit-in-thread.ts";
import { openGeography } from "./geography/geography.ts";
import { readFrom } from "./geography/read-files.ts";
import { type Keys, openKeys } from "./keys.ts";
import { limitsHere } from "./limits.ts";
import { mapSources } from "./map-sources.ts";
import { preparedHere } from "./prepared.ts";
import { preparedInThread } from "./prepared-in-thread.ts";
import { prune } from "./prune.ts";
import { FitKeeper } from "./published-fit.ts";
import { keptSecret } from "./secret.ts";
import { requireOwnSecret } from "./secret-check.ts";
import { LOOPBACK, type Settings, settingsFrom } from "./settings.ts";
import { servePage } from "./static-files.ts";
import { oncePerDay } from "./trouble.ts";
import { Turns } from "./turns.ts";

export interface Atlas {
  app: Hono;
  /** From here on it says that it is not ready. */
  stopping: () => void;
  /** Waits for a refresh of the fit under way and closes the database. */
  close: () => Promise<void>;
}

const HOUR_ms = 3_600_000;
const DAY_ms = 24 * HOUR_ms;
/** Longer than proxies keep their connections: one closed just as it is used again would look like a failure, ms. */
const KEPT_ALIVE_ms = 75_000;
/** What is running when the server is told to stop may take so long to end, ms. */
const DRAIN_ms = 20_000;
const notRefreshed = (error: unknown) =>
  console.error("The fit was not refreshed:", causesOf(error).at(-1));

/**
 * Opens the database and puts the API and the page together.
 * @throws DatabaseTaken when another atlas has it open; DatabaseRefused, with the remedy, when it must not be opened as it is
 */
export async function openAtlas(settings: Settings): Promise<Atlas> {
  const letGo = claimDatabase(settings.database);
  try {
    return await openClaimed(settings, letGo);
  } catch (error) {
    letGo();
    throw error;
  }
}

async function openClaimed(settings: Settings, letGo: () => void): Promise<Atlas> {
  const { alarmWebhook } = settings;
  const webhook = alarmWebhook ? new AlarmWebhook(alarmWebhook) : undefined;
  const { db, storage, isNew, close }: OpenDatabase = await openDatabase(
    settings.database,
    settings.room,
  );
  const keys = await keysOf(settings, db, isNew).catch((error) => {
    close();
    throw error;
  });
  let isStopping = false;
  const now = () => new Date();
  // This process alone publishes, so what it holds is the newest.
  const believe_ms = Number.POSITIVE_INFINITY;
  const { demo, newKeyDays } = settings;
  const onTrouble = oncePerDay((news) => webhook?.tell(news), now);
  const turns = new Turns();
  // A database in memory is this thread's alone.
  const fits =
    settings.database === ":memory:" ? undefined : fitsInThread(settings.database, turns);
  const fit = new FitKeeper({
    ...{ db, now, demo, believe_ms, newKeyDays },
    ...(fits && { fits }),
    onFailing: () => onTrouble("fit failing"),
    ...(webhook && { onAlarms: webhook.tell }),
  });
  const prepared =
    settings.database === ":memory:"
      ? { ...preparedHere(db, demo), close: async () => {} }
      : preparedInThread(db, settings.database, demo, settings.room.disk_reserve_bytes, turns);
  const { map, origins, tiles } = mapSources(settings.elevationTiles, settings.basemapStyle);
  const app = createApp({
    db,
    commit: groupCommit(db),
    storage,
    stopping: () => isStopping,
    keys,
    fit,
    prepared,
    gazetteer: openGeography(readFrom(settings.geographyDir), tiles),
    now,
    demo,
    onTrouble,
    limits: limitsHere(
      { writes: settings.writeLimit, reads: settings.readLimit, tunes: settings.floodLimit },
      keys,
      now,
      () => onTrouble("flood"),
    ),
    newKeyDays: settings.newKeyDays,
    stewardToken: settings.stewardToken,
    clientAddress: (c) =>
      clientAddress(
        getConnInfo(c).remote.address,
        c.req.header("X-Forwarded-For"),
        settings.proxies,
      ),
    afterWrite: () => fit.refreshSoon(),
    map,
  });
  servePage(app, { ...settings, mapOrigins: origins });
  // It takes seconds where a fit may take a minute, so it has its turn first.
  prepared.ahead(await fit.current());
  // What was accepted just before the last stop may not be in the published version yet: it follows, while that one answers.
  const caughtUp = fit.refresh();
  if ((await fit.current()).rows_sha256 === null) await caughtUp;
  else caughtUp.catch(notRefreshed);
  // Days pass without a write, too.
  const hourly = setInterval(() => void fit.refresh().catch(notRefreshed), HOUR_ms).unref();
  const thinOut = () =>
    void prune(db, now()).catch((error) =>
      console.error("Older versions and answers were not thinned out:", causesOf(error).at(-1)),
    );
  thinOut();
  const daily = setInterval(thinOut, DAY_ms).unref();
  return {
    app,
    stopping: () => {
      isStopping = true;
    },
    close: async () => {
      clearInterval(hourly);
      clearInterval(daily);
      // What is not published now is at the next start.
      await fit.finish().catch(notRefreshed);
      await Promise.all([fits?.close(), webhook?.close()]);
      await prepared.close();
      close();
      letGo();
    },
  };
}

/** @throws DatabaseRefused when the secret is missing, or another database's */
export async function keysOf(
  { secret, database }: Pick<Settings, "secret" | "database">,
  db: Database,
  isNew: boolean,
): Promise<Keys> {
  const isEmpty = isNew || (!(await findSecretCheck(db)) && (await countTunes(db)) === 0);
  const keys = await openKeys(secret || (await keptSecret(database, isEmpty)));
  await requireOwnSecret(db, keys);
  return keys;
}

async function main(): Promise<void> {
  const settings = settingsFrom(process.env, process.argv.includes("--demo"));
  await mkdir("data", { recursive: true });
  await buildMissing(settings);
  const atlas = await openAtlas(settings);
  const { host } = settings;
  const server = serve(
    {
      fetch: atlas.app.fetch,
      port: settings.port,
      hostname: host,
      serverOptions: { keepAliveTimeout: KEPT_ALIVE_ms },
    },
    ({ port }) => {
      const name = host === LOOPBACK ? "localhost" : isIPv6(host) ? `[${host}]` : host;
      console.log(
        `The atlas is open at http://${name}:${port}${settings.demo ? " (invented demo data)" : ""}`,
      );
    },
  );
  const allAnswered = followRequests(server);
  server.on("error", (error: NodeJS.ErrnoException) => {
    const taken = error.code === "EADDRINUSE";
    const noAddress = error.code === "EADDRNOTAVAIL" || error.code === "ENOTFOUND";
    console.error(
      taken
        ? `Port ${settings.port} is taken. Set PORT to another one.`
        : noAddress
          ? `HOST is ${host}, which is no address of this machine. Set it to one, to 0.0.0.0 for all, or leave it unset for this machine alone.`
          : error.message,
    );
    process.exit(1);
  });
  for (const signal of ["SIGINT", "SIGTERM"] as const) {
    process.once(signal, () => void stop(server, allAnswered, atlas).then(() => process.exit(0)));
  }
}

/** Follows the requests that a server is answering, and says when there is none. */
function followRequests(server: ServerType): () => Promise<void> {
  const running = new Set<ServerResponse>();
  let none = () => {};
  server.on("request", (_: unknown, response: ServerResponse) => {
    running.add(response);
    response.once("close", () => {
      running.delete(response);
      if (running.size === 0) none();
    });
  });
  return () =>
    new Promise((resolve) => {
      none = resolve;
      if (running.size === 0) resolve();
    });
}

/** Takes no more connections, lets what is running end, and closes the database. */
async function stop(
  server: ServerType,
  allAnswered: () => Promise<void>,
  atlas: Atlas,
): Promise<void> {
  atlas.stopping();
  server.close();
  await Promise.race([allAnswered(), setTimeout(DRAIN_ms, undefined, { ref: false })]);
  // Those that are left are kept alive without a request, and would hold the server open for ever.
  if ("closeAllConnections" in server) server.closeAllConnections();
  await atlas.close();
}

if (import.meta.main) {
  main().catch((error) => {
    console.error(error instanceof Error ? error.message : error);
    process.exit(1);
  });
}
