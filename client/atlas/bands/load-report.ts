import type { StudyReport } from "./report.ts";

/** The study's report, fetched when somebody wants to see it: it is longer than the page's own code. */
export async function loadReport(): Promise<StudyReport> {
  const { default: report } = await import("./report.json");
  return report as StudyReport;
}
