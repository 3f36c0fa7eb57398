import type { ComponentChildren } from "preact";
import { useId, useState } from "preact/hooks";
import { AtlasProblem, Unreachable } from "../base/answers/api.ts";
import { stewardWords as words } from "../texts/steward.ts";
import { whatWentWrong } from "../ui/went-wrong.tsx";
import { stewardApi } from "./steward-api.ts";

/** Asks for the token, and tries it before it lets anybody in. */
export function Door(props: { refused: string; onToken: (token: string) => void }) {
  const [typed, setTyped] = useState("");
  const [wrong, setWrong] = useState<ComponentChildren>(props.refused);
  const [asking, setAsking] = useState(false);
  const id = useId();
  const open = async () => {
    const token = typed.trim();
    // A header takes no other characters, so it cannot be the token.
    if (!/^[\x21-\x7e]+$/.test(token)) return setWrong(words.wrong);
    setAsking(true);
    try {
      await stewardApi(token).alarms();
      props.onToken(token);
    } catch (error) {
      setWrong(whyNot(error));
    } finally {
      setAsking(false);
    }
  };
  return (
    <section class="sheet" aria-labelledby={`${id}title`}>
      <h2 id={`${id}title`}>{words.title}</h2>
      <p>{words.intro}</p>
      <form
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void open();
        }}
      >
        <div class="field">
          <label for={id}>{words.token}</label>
          <input
            id={id}
            name="token"
            type="password"
            autocomplete="off"
            spellcheck={false}
            value={typed}
            aria-describedby={`${id}hint ${id}wrong`}
            aria-invalid={wrong ? true : undefined}
            onInput={(event) => {
              setTyped(event.currentTarget.value);
              setWrong("");
            }}
          />
          <p class="hint" id={`${id}hint`}>
            {words.tokenHint}
          </p>
        </div>
        <div role="alert" id={`${id}wrong`}>
          {wrong && <p class="error">{wrong}</p>}
        </div>
        <p>
          <button type="submit" class="main" disabled={asking}>
            {words.open}
          </button>
        </p>
      </form>
    </section>
  );
}

function whyNot(error: unknown): ComponentChildren {
  if (error instanceof Unreachable) return words.offline;
  if (!(error instanceof AtlasProblem)) throw error;
  const { status } = error.problem;
  if (status === 401) return words.wrong;
  return status === 404 ? words.none : whatWentWrong(error);
}
