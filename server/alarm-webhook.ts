import { setTimeout } from "node:timers/promises";
import type { AlarmNews } from "./published-fit.ts";
import type { TroubleNews } from "./trouble.ts";

type News = AlarmNews | TroubleNews;

/** An answer is waited for so long, ms. */
const ANSWER_ms = 10_000;
/** Tried again after so long each time, ms; then it is given up, and the log says so. */
const AGAIN_ms = [5_000, 60_000, 600_000];
/** News that wait to be sent, at most: an atlas that cannot reach its webhook for days keeps no more. */
const WAITING_MOST = 20;

interface Options {
  again_ms?: readonly number[];
  answer_ms?: number;
}

/**
 * Tells an address of alarms and troubles by POST, one after another, while everything else goes on. Nothing that
 * is sent is about a person, and the address may hold a secret, so neither it nor an answer is written to the log.
 */
export class AlarmWebhook {
  readonly #url: string;
  readonly #again_ms: readonly number[];
  readonly #answer_ms: number;
  readonly #stop = new AbortController();
  readonly #waiting: News[] = [];
  #sending: Promise<void> | undefined;

  /** @throws Error when the address is none of HTTP */
  constructor(url: string, { again_ms = AGAIN_ms, answer_ms = ANSWER_ms }: Options = {}) {
    if (!/^https?:$/.test(URL.parse(url)?.protocol ?? "")) {
      throw new Error("ALARM_WEBHOOK must be an address that begins with https:// or http://.");
    }
    this.#url = url;
    this.#again_ms = again_ms;
    this.#answer_ms = answer_ms;
  }

  /** Sends news as soon as it can; never fails and waits for nothing. */
  readonly tell = (news: News): void => {
    if (this.#stop.signal.aborted) return;
    this.#waiting.push(news);
    if (this.#waiting.length > WAITING_MOST) this.#waiting.shift();
    this.#sending ??= this.#sendAll().finally(() => {
      this.#sending = undefined;
    });
  };

  /** What was not sent by now is not: the next version has the same alarms, and the steward's page shows them. */
  async close(): Promise<void> {
    this.#stop.abort();
    await this.#sending;
  }

  async #sendAll(): Promise<void> {
    for (let news = this.#waiting.shift(); news; news = this.#waiting.shift()) {
      await this.#send(JSON.stringify(news));
    }
  }

  async #send(body: string): Promise<void> {
    let why = "";
    for (const pause_ms of [0, ...this.#again_ms]) {
      await setTimeout(pause_ms, undefined, { signal: this.#stop.signal, ref: false }).catch(
        () => {},
      );
      if (this.#stop.signal.aborted) return;
      why = await this.#try(body);
      if (why === "") return;
    }
    console.error("ALARM_WEBHOOK was not told of something:", why);
  }

  /** @returns why it was not taken; empty when it was */
  async #try(body: string): Promise<string> {
    try {
      const response = await fetch(this.#url, {
        method: "POST",
        headers: { "Content-Type": "application/json" },
        body,
        redirect: "error",
        signal: AbortSignal.any([this.#stop.signal, AbortSignal.timeout(this.#answer_ms)]),
      });
      await response.body?.cancel();
      return response.ok ? "" : `it answered ${response.status}`;
    } catch (error) {
      return error instanceof Error ? error.name : "no answer";
    }
  }
}
