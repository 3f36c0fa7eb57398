import { useCallback, useMemo, useState } from "preact/hooks";
import type { Logged } from "../../model/drift/logged.ts";
import { type DriftPicture, driftPictureOf, type PicturePoint } from "../../model/drift/picture.ts";
import { ENDS, type End } from "../../model/end.ts";
import { dayOf } from "../app/heater/own-words.ts";
import { t } from "../texts/app.ts";
import { logbookWords } from "../texts/logbook.ts";
import { ReadableChart } from "../ui/charts/readable-chart.tsx";
import { ChoiceField } from "../ui/choice-field.tsx";
import { coInPpm } from "../ui/co-text.ts";
import { format, formatPercent } from "../units.ts";
import { coChart, mixtureChart, shown_ppm } from "./drift-chart.ts";

const words = logbookWords.drift.picture;

/** Mixture and CO of one heater over its use, as they are compared: what the sentences rest on, seen. */
export function DriftPictures({ logged }: { logged: readonly Logged[] }) {
  const [end, setEnd] = useState<End>("low");
  const picture = useMemo(() => driftPictureOf(logged, end), [logged, end]);
  return (
    <div class="drift-pictures">
      <ChoiceField
        label={words.end}
        name="drift.end"
        value={end}
        options={ENDS.map((one) => [one, t[one]] as const)}
        onValue={setEnd}
      />
      {picture ? <Pictures picture={picture} end={end} /> : <p class="note">{words.none}</p>}
    </div>
  );
}

function Pictures({ picture, end }: { picture: DriftPicture; end: End }) {
  const { axis, points, cleanings, co_line, left_out } = picture;
  const at = (point: PicturePoint) => `${dayOf(point.at)}, ${amountAt(picture, point)}`;
  const drawMixture = useCallback(
    (width: number) => mixtureChart({ picture, label: words.mixtureLabel(t.endWord[end]), width }),
    [picture],
  );
  const drawCo = useCallback(
    (width: number) => coChart({ picture, label: words.coLabel(t.endWord[end]), width }),
    [picture],
  );
  const mixtures = useMemo(
    () =>
      points.map((point) => ({
        x: point.x,
        y: point.mixture_pct,
        text: `${at(point)}: ${mixtureIn(point)}`,
      })),
    [picture],
  );
  const readings = useMemo(
    () =>
      points.flatMap((point) => {
        const y = shown_ppm(point);
        if (y === undefined) return [];
        const compares = point.compares ? "" : ` ${words.apart}`;
        return [{ x: point.x, y, text: `${at(point)}: ${coInPpm(point.reading)}.${compares}` }];
      }),
    [picture],
  );
  return (
    <>
      <h3>{words.mixture}</h3>
      <ReadableChart
        draw={drawMixture}
        axes={{ x: words.axis[axis], y: words.mixtureAxis }}
        readings={mixtures}
        label={words.read}
      />
      {readings.length > 0 && (
        <>
          <h3>{words.co}</h3>
          <ReadableChart
            draw={drawCo}
            axes={{ x: words.axis[axis], y: words.coAxis }}
            readings={readings}
            label={words.read}
          />
        </>
      )}
      <p class="note">
        {words.means} {co_line && words.line} {cleanings.length > 0 && words.cleaning}{" "}
        {left_out > 0 && words.leftOut(left_out)}
      </p>
    </>
  );
}

function amountAt({ axis }: DriftPicture, { x }: PicturePoint): string {
  return logbookWords.drift.amount[axis](format(x, Number.isInteger(x) ? 0 : 1));
}

function mixtureIn({ mixture_pct }: PicturePoint): string {
  const size = formatPercent(Math.abs(mixture_pct));
  if (size === formatPercent(0)) return words.same;
  return mixture_pct > 0 ? words.richer(size) : words.leaner(size);
}
