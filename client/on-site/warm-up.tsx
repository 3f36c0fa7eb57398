import { onsite as words } from "../texts/onsite.ts";
import { Countdown } from "./countdown.tsx";
import { FlameOut } from "./flame-out.tsx";
import type { StageProps } from "./stage-props.ts";
import { useNow } from "./use-session.ts";

/** A cold burner tells nothing. */
export function WarmUp({ stage, press }: StageProps<"warm-up">) {
  const isWarm = useNow() >= stage.due_at;
  return (
    <section class="sheet" aria-labelledby="step">
      <h2 id="step" tabIndex={-1}>
        {words.warmUp.title}
      </h2>
      <p>{words.warmUp.why}</p>
      <Countdown due_at={stage.due_at} before={words.warmUp.left} over={words.warmUp.over} />
      <button
        type="button"
        class={isWarm ? "main large" : "large"}
        onClick={() => press({ is: "warm" })}
      >
        {isWarm ? words.warmUp.begin : words.warmUp.already}
      </button>
      <FlameOut onOut={() => press({ is: "out" })} />
    </section>
  );
}
