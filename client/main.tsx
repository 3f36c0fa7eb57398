import { render } from "preact";
import { useEffect, useLayoutEffect, useState } from "preact/hooks";
import { useFit } from "./fit-store.ts";
import { askedFor, keptOf } from "./heater/facts.ts";
import type { MyHeaters } from "./heater/my-heater.ts";
import { useOffline } from "./offline/use-offline.ts";
import { AlarmLink } from "./parts/alarm-link.tsx";
import { Cautions } from "./parts/cautions.tsx";
import { LanguageChoice } from "./parts/language-choice.tsx";
import { later } from "./parts/later.tsx";
import { FIRST_QUESTION, type Question } from "./question.ts";
import { recall, remember } from "./remember.ts";
import "./style/index.css";
import { t } from "./texts/app.ts";
import { direction, language } from "./texts/language.ts";
import { Alarm } from "./views/alarm.tsx";
import { Atlas } from "./views/atlas.tsx";

// Fetched when first opened: they bring the schema, the charts and the cells along.
const Trip = later(() => import("./views/trip.tsx").then((m) => m.TripView));
const OnSite = later(() => import("./views/onsite.tsx").then((m) => m.OnSite));
const Card = later(() => import("./views/card.tsx").then((m) => m.Card));
const Logbook = later(() => import("./views/logbook.tsx").then((m) => m.LogbookView));
const Share = later(() => import("./views/share.tsx").then((m) => m.Share));
const Scaling = later(() => import("./views/scaling.tsx").then((m) => m.Scaling));
const Data = later(() => import("./views/data.tsx").then((m) => m.Data));
const MyHeaterLine = later(() => import("./heater/my-heater-line.tsx").then((m) => m.MyHeaterLine));
const AfterAlarm = later(() => import("./views/onsite-outside.tsx").then((m) => m.AfterAlarm));

const VIEWS = ["atlas", "trip", "onsite", "card", "logbook", "share", "scaling", "data"] as const;
type View = (typeof VIEWS)[number];

/**
 * The first step of the address names the view; further steps are the view's own pages. The alarm's two screens are on no
 * list: every view has a way to them.
 */
function viewInAddress(): View | "alarm" | "outside" {
  const [name, step] = location.hash.replace(/^#\/?/, "").split("/");
  if (name === "alarm") return step === "outside" ? step : name;
  return VIEWS.find((view) => view === name) ?? "atlas";
}

function App() {
  const [view, setView] = useState(viewInAddress);
  const { fit, stale, reload, follow } = useFit();
  const [question, setQuestion] = useState<Question>(() => ({
    ...FIRST_QUESTION,
    ...recall<Question>("question"),
  }));
  const [my, setMy] = useState<MyHeaters>();
  const mine = my?.mine;
  const asked = askedFor(question, mine);
  const offline = useOffline(fit, asked.heat_kW, () => void follow());
  useEffect(() => {
    const onHash = () => {
      setView(viewInAddress());
      window.scrollTo(0, 0);
    };
    addEventListener("hashchange", onHash);
    // The address may have changed since the first drawing.
    setView(viewInAddress());
    return () => removeEventListener("hashchange", onHash);
  }, []);
  // Before the view's own effects: a page within a view puts its name in front.
  useLayoutEffect(() => {
    document.title = view === "atlas" ? t.name : `${titleOf(view)} · ${t.name}`;
  }, [view]);
  const ask = (next: Question) => {
    const kept = keptOf(next, question, mine);
    setQuestion(kept);
    remember("question", kept);
  };
  // In front of everything: it needs no fit, no network and no navigation.
  if (view === "alarm") return <Alarm />;
  return (
    <>
      <button
        type="button"
        class="skip"
        onClick={() => document.getElementById("content")?.focus()}
      >
        {t.skip}
      </button>
      <header>
        <h1>
          <a href="#/">{t.name}</a>
        </h1>
        <p class="tagline">{t.tagline}</p>
        <AlarmLink />
        <nav aria-label={t.name}>
          {VIEWS.map((name) => (
            <a key={name} href={`#/${name}`} aria-current={name === view ? "page" : undefined}>
              {t.views[name]}
            </a>
          ))}
        </nav>
      </header>
      <main id="content" tabIndex={-1}>
        {fit?.demo && <p class="demo-mark">{t.demo}</p>}
        {stale && fit && <p class="warning">{t.unreachable}</p>}
        {offline && <offline.Notices fit={fit} stale={stale} />}
        {view === "outside" ? (
          <AfterAlarm />
        ) : fit ? (
          <>
            <div class="my-heater">
              <MyHeaterLine
                fit={fit}
                heat_kW={asked.heat_kW}
                opens={view !== "logbook"}
                onHeaters={setMy}
              />
            </div>
            {view === "atlas" && <Atlas fit={fit} question={asked} mine={mine} onQuestion={ask} />}
            {view === "trip" && <Trip fit={fit} mine={mine} />}
            {view === "onsite" && (
              <OnSite
                fit={fit}
                question={asked}
                mine={mine}
                onQuestion={ask}
                onShared={() => void follow()}
              />
            )}
            {view === "card" && <Card fit={fit} mine={mine} />}
            {view === "logbook" && <Logbook fit={fit} onShared={() => void follow()} />}
            {view === "share" && <Share fit={fit} mine={mine} onShared={() => void follow()} />}
            {view === "scaling" && <Scaling fit={fit} />}
            {view === "data" && <Data fit={fit} />}
          </>
        ) : stale ? (
          <p class="warning">
            {t.noFit}{" "}
            <button type="button" onClick={() => void reload()}>
              {t.retry}
            </button>
          </p>
        ) : (
          <p class="asking">{t.loading}</p>
        )}
        {offline && <offline.OfflinePanel />}
        <Cautions />
      </main>
      <footer>
        <LanguageChoice />
      </footer>
    </>
  );
}

function titleOf(view: View | "alarm" | "outside"): string {
  return view === "alarm" || view === "outside" ? t.alarm.open : t.views[view];
}

document.documentElement.lang = language;
document.documentElement.dir = direction;
const root = document.getElementById("app");
if (root) {
  root.replaceChildren();
  render(<App />, root);
}
