import { onsite as words } from "../texts/onsite.ts";

/** Apart from all other buttons: it is not to be pressed by mistake, nor looked for. */
export function FlameOut({ onOut }: { onOut: () => void }) {
  return (
    <div class="apart">
      <button type="button" class="large" onClick={onOut}>
        {words.step.out}
      </button>
    </div>
  );
}
