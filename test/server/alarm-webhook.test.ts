import type { ServerResponse } from "node:http";
import { afterEach, expect, test, vi } from "vitest";
import { AlarmWebhook } from "../../server/alarm-webhook.ts";
import type { AlarmNews } from "../../server/published-fit.ts";
import { settingsFrom } from "../../server/settings.ts";
import { WAIT_ms } from "../limits.ts";
import { listening } from "./listening.ts";

const news: AlarmNews = {
  event: "held back",
  fit: "2026-11-25.3",
  alarms: [
    { code: "moved", heat_kW: 5, end: "low", sentence: "It moved.", value: 0.03, threshold: 0.02 },
  ],
};

const closing: (() => Promise<void>)[] = [];
const failed = vi.spyOn(console, "error").mockImplementation(() => {});
afterEach(async () => {
  for (const close of closing.splice(0)) await close();
  failed.mockClear();
});

const listen = (answer: (response: ServerResponse, n: number) => void) =>
  listening(answer, closing);

function webhookTo(url: string, again_ms: number[] = [], answer_ms = WAIT_ms): AlarmWebhook {
  const webhook = new AlarmWebhook(url, { again_ms, answer_ms });
  closing.unshift(() => webhook.close());
  return webhook;
}

const soon = { timeout: WAIT_ms };
const ok = (response: ServerResponse) => void response.writeHead(204).end();

test("alarms are posted as JSON, one after another", async () => {
  const { url, taken } = await listen(ok);
  const { tell } = webhookTo(url);
  tell(news);
  tell({ ...news, event: "published" });
  await expect.poll(() => taken.length, soon).toBe(2);
  expect(taken[0]).toMatchObject({
    method: "POST",
    headers: { "content-type": "application/json" },
  });
  expect(taken.map(({ body }) => JSON.parse(body))).toEqual([
    news,
    { ...news, event: "published" },
  ]);
  expect(failed).not.toHaveBeenCalled();
});

test("what is refused is sent again, a few times, and then the log says so without the address", async () => {
  const { url, taken } = await listen((response) => void response.writeHead(500).end("no"));
  webhookTo(url, [1, 1]).tell(news);
  await expect.poll(() => failed.mock.calls.length, soon).toBe(1);
  expect(taken.length).toBe(3);
  const said = JSON.stringify(failed.mock.calls);
  expect(said).toContain("answered 500");
  expect(said).not.toContain("a-secret-path");
});

test("what comes back in time is taken the second time", async () => {
  const { url, taken } = await listen((response, n) =>
    n === 1 ? response.destroy() : ok(response),
  );
  webhookTo(url, [1]).tell(news);
  await expect.poll(() => taken.length, soon).toBe(2);
  expect(failed).not.toHaveBeenCalled();
});

test("an answer that never comes is given up, and a redirection is not followed", async () => {
  const silent = await listen(() => {});
  webhookTo(silent.url, [], 20).tell(news);
  await expect.poll(() => failed.mock.calls.length, soon).toBe(1);
  const other = await listen(ok);
  const { url } = await listen(
    (response) => void response.writeHead(307, { Location: other.url }).end(),
  );
  webhookTo(url).tell(news);
  await expect.poll(() => failed.mock.calls.length, soon).toBe(2);
  expect(other.taken).toEqual([]);
});

test("closing waits for no answer and sends nothing more", async () => {
  const { url, taken } = await listen(() => {});
  const webhook = webhookTo(url, [1]);
  webhook.tell(news);
  await expect.poll(() => taken.length, soon).toBe(1);
  webhook.tell(news);
  await webhook.close();
  webhook.tell(news);
  expect(taken.length).toBe(1);
});

test("an address that is none is refused at the start, with the variable's name", () => {
  for (const url of ["hooks.example.org", "ftp://example.org", "mailto:a@example.org"]) {
    expect(() => new AlarmWebhook(url)).toThrow("ALARM_WEBHOOK must be an address");
  }
  const { alarmWebhook } = settingsFrom({ ALARM_WEBHOOK: "https://example.org/x" }, false);
  expect(alarmWebhook).toBe("https://example.org/x");
});
