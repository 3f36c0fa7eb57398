import { t } from "../texts/app.ts";
import { AlarmLink } from "../ui/alarm-link.tsx";
import { OpensOnPaper } from "../ui/opens-on-paper.tsx";

/** The cautions, on every view: the notice, which begins with its title, always in full, the lists on a press, and on paper. */
export function Cautions() {
  return (
    <aside class="cautions" aria-label={t.safety.title}>
      <p>
        <strong>{t.safety.title}.</strong> {t.safety.notice.slice(t.safety.title.length + 2)}
      </p>
      <AlarmLink />
      <OpensOnPaper summary={t.safety.more}>
        <h3>{t.safety.notFor}</h3>
        <ul>
          {t.safety.not_for.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
        <h3>{t.safety.deferTo}</h3>
        <ul>
          {t.safety.defer_to.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </OpensOnPaper>
    </aside>
  );
}
