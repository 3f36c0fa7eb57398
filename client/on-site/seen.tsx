import type { SetRate, Wait } from "../../model/sweep/answer.ts";
import type { Picture } from "../../model/sweep/picture.ts";
import { coWords } from "../texts/co.ts";
import { onsite as words } from "../texts/onsite.ts";
import { format } from "../units.ts";

const WAYS = [
  ["lean", "leaner"],
  ["rich", "richer"],
] as const;

/** What was seen on either side of the best rate so far, as the sweep itself judges it, and where it looks next. */
export function Seen(props: {
  answer: SetRate | Wait;
  picture: Picture;
  /** The pump has still to be set there. */
  isNext: boolean;
  hz: (rate: number) => string;
}) {
  const { answer, picture, isNext, hz } = props;
  const why = answer.kind === "set" ? answer.why : undefined;
  return (
    <dl class="seen" data-progress={answer.step}>
      {WAYS.map(([way, asked]) => {
        const rose_Hz = picture.risen_Hz[way];
        const there = picture.rates.find(({ pump_Hz }) => pump_Hz === rose_Hz);
        return (
          <div key={way} data-side={way} data-seen={answer[way]}>
            <dt>{words.progress[way]}:</dt>{" "}
            <dd>
              {words.progress.seen[answer[way]]}
              {there && (
                <small>
                  {words.progress.at(
                    there.beyond === "ceiling"
                      ? coWords.above(format(there.ppm))
                      : format(there.ppm),
                    hz(there.pump_Hz),
                  )}
                </small>
              )}
              {isNext && why === asked && <small>{words.progress.next(hz(answer.pump_Hz))}</small>}
            </dd>
          </div>
        );
      })}
    </dl>
  );
}
