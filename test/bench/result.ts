/** One measured ratio with the limit it is held to; with none it is reported alone. */
export interface Result {
  name: string;
  ratio: number;
  limit?: number;
  better: "higher" | "lower";
  detail: string;
}
