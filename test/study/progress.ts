import type { StudyScenario } from "../../client/atlas/bands/report.ts";

const WIDTH = 30;

/** Shows how far the study is: a bar that is drawn over on a terminal, else a line for each scenario done. */
export function progressOn(stream: NodeJS.WriteStream) {
  const began = performance.now();
  return (done: number, all: number, finished?: StudyScenario): void => {
    const seconds = (performance.now() - began) / 1000;
    if (stream.isTTY) {
      const full = Math.round((WIDTH * done) / all);
      const left = Math.round((seconds * (all - done)) / done);
      const bar = "█".repeat(full) + "░".repeat(WIDTH - full);
      const end = done === all ? "\n" : "";
      stream.write(`\r\x1b[K${bar} ${done} of ${all} runs, about ${left} s left${end}`);
    } else if (finished) {
      stream.write(
        `${seconds.toFixed(0)} s: ${finished.id}, ${finished.runs} runs (${done} of ${all})\n`,
      );
    }
  };
}
