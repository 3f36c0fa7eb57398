import { linkWords as words } from "../../texts/link.ts";

/** Own tunes go into a link only when somebody asks for it. */
export function OwnTunesCheck(props: {
  /** How many there are; without any nothing is asked. */
  own: number;
  checked: boolean;
  onChecked: (checked: boolean) => void;
}) {
  const { own, checked, onChecked } = props;
  if (own === 0) return null;
  return (
    <label class="check">
      <input
        type="checkbox"
        name="link.own"
        checked={checked}
        onChange={(e) => onChecked(e.currentTarget.checked)}
      />
      <span>
        {words.ownTunes(own)} <span class="note">{words.withoutOwn}</span>
      </span>
    </label>
  );
}
