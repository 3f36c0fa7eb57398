import type { Planted } from "./scenario.ts";

const AT_ONCE = 8;

/** Posts tunes through the API like anyone's; a repeated load adds nothing, since each has its key. Answers how many were accepted. */
export async function load(origin: string, planted: readonly Planted[]): Promise<number> {
  const queue = [...planted];
  let accepted = 0;
  const worker = async () => {
    for (let next = queue.shift(); next; next = queue.shift()) {
      if ((await submit(origin, next)) === "accepted") accepted++;
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, worker));
  return accepted;
}

async function submit(origin: string, planted: Planted): Promise<string> {
  const response = await fetch(`${origin}/api/tunes`, {
    method: "POST",
    headers: { "Content-Type": "application/json", "Idempotency-Key": planted.key },
    body: JSON.stringify(planted.tune),
  });
  if (response.status === 429) {
    const wait_s = Number(response.headers.get("Retry-After") ?? 1);
    await new Promise((done) => setTimeout(done, 1000 * wait_s));
    return submit(origin, planted);
  }
  if (response.status !== 201) {
    throw new Error(`${planted.key} was refused (${response.status}): ${await response.text()}`);
  }
  const { verdict } = (await response.json()) as { verdict: string };
  return verdict;
}
