import { type ComponentProps, render } from "preact";
import { useEffect, useLayoutEffect, useState } from "preact/hooks";
import { Cautions } from "./app/cautions.tsx";
import { useFit } from "./app/fit-store.ts";
import { askedFor, keptOf } from "./app/heater/facts.ts";
import type { MyHeaters } from "./app/heater/my-heater.ts";
import { LanguageChoice } from "./app/language-choice.tsx";
import { useOffline } from "./app/offline/use-offline.ts";
import { SunButton, ThemeChoice } from "./app/theme-choice.tsx";
import { FIRST_QUESTION, type Question } from "./base/question.ts";
import { recall, remember } from "./base/remember.ts";
import { AlarmLink } from "./ui/alarm-link.tsx";
import { later } from "./ui/later.tsx";
import "./app/style.css";
import { applyChosenTheme } from "./base/theme.ts";
import { direction, language } from "./language.ts";
import { Alarm } from "./on-site/alarm-screen.tsx";
import { Start } from "./start/start.tsx";
import { t } from "./texts/app.ts";

// Fetched when first opened: they bring the schema, the charts and the cells along.
const Trip = later(() => import("./trip/trip-view.tsx").then((m) => m.TripView));
const OnSite = later(() => import("./on-site/on-site.tsx").then((m) => m.OnSite));
const Card = later(() => import("./card/card.tsx").then((m) => m.Card));
const Logbook = later(() => import("./logbook/logbook.tsx").then((m) => m.LogbookView));
const Atlas = later(() => import("./atlas/atlas.tsx").then((m) => m.Atlas));
const MyHeaterLine = later(() =>
  import("./my-heater/my-heater-line.tsx").then((m) => m.MyHeaterLine),
);
const Steward = later(() => import("./steward/steward.tsx").then((m) => m.Steward));
const AfterAlarm = later(() => import("./on-site/after-alarm.tsx").then((m) => m.AfterAlarm));

/** The five places, by their addresses. */
const PLACES = {
  start: "#/",
  trip: "#/trip",
  onsite: "#/onsite",
  logbook: "#/logbook",
  atlas: "#/map",
} as const;
type Place = keyof typeof PLACES;
/** The first steps of addresses that belong to a place called otherwise. */
const BELONGS: Record<string, Place> = {
  card: "start",
  map: "atlas",
  scaling: "atlas",
  data: "atlas",
  share: "atlas",
  // Before there were five places the answer was here.
  atlas: "start",
};

/** The first step of the address names the view; further steps are the view's own pages, the alarm's aside. */
function viewInAddress(): string {
  const [name = "", step] = location.hash.replace(/^#\/?/, "").split(/[/?]/);
  return name === "alarm" && step === "outside" ? step : name;
}

/** The place that a view belongs to. */
function placeOf(view: string): Place {
  return BELONGS[view] ?? (view in PLACES ? (view as Place) : "start");
}

type Linked = import("./app/link/linked.tsx").Linked;

/** What a link holds that was opened here; its part of the page is fetched for it alone. */
const isLink = () => location.hash.includes("?");
const linkHere = () => import("./app/link/linked.tsx").then((m) => m.linkedHere());

function App() {
  const [view, setView] = useState(viewInAddress);
  const { fit, stale, reload, follow } = useFit();
  const [question, setQuestion] = useState<Question>(() => ({
    ...FIRST_QUESTION,
    ...recall<Question>("question"),
  }));
  const [my, setMy] = useState<MyHeaters>();
  // Undefined while it is being read: an answer to something else must not show first.
  const [linked, setLinked] = useState<Linked | null | undefined>(isLink() ? undefined : null);
  const mine = linked ? linked.mine : my?.mine;
  const asked = linked?.question ?? askedFor(question, mine);
  const offline = useOffline(fit, asked.heat_kW, () => void follow());
  useEffect(() => {
    const look = () => {
      setView(viewInAddress());
      if (!isLink()) return;
      setLinked(undefined);
      linkHere().then(setLinked, () => setLinked(null));
    };
    const onHash = () => {
      look();
      window.scrollTo(0, 0);
      // What was pressed is gone with its view: the focus goes on at the beginning of the next.
      if (document.activeElement?.closest("main"))
        document.getElementById("content")?.focus({ preventScroll: true });
    };
    addEventListener("hashchange", onHash);
    // The address may have changed since the first drawing.
    look();
    return () => removeEventListener("hashchange", onHash);
  }, []);
  const place = placeOf(view);
  const isAlarm = view === "alarm" || view === "outside";
  // No way of the page leads there: whoever has the token knows the address.
  const isSteward = view === "steward";
  // Before the view's own effects: a page within a place puts its name in front.
  useLayoutEffect(() => {
    const title = isAlarm ? t.alarm.open : place !== "start" && t.places[place];
    document.title = title ? `${title} · ${t.name}` : t.name;
  }, [view]);
  const keep = (next: Question) => {
    setQuestion(next);
    remember("question", next);
  };
  const ask = (next: Question) =>
    linked ? setLinked(linked.asking(next)) : keep(keptOf(next, question, mine));
  const endLink = (taken?: Question) => {
    if (taken) keep(taken);
    setLinked(null);
    location.hash = "#/";
  };
  const whose = linked ? "linked" : "own";
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
        <nav class="places" aria-label={t.name}>
          {(Object.keys(PLACES) as Place[]).map((name) => (
            <a
              key={name}
              href={PLACES[name]}
              aria-current={name === place && !isAlarm && !isSteward ? "page" : undefined}
            >
              {t.places[name]}
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
        ) : isSteward ? (
          <Steward />
        ) : fit && linked !== undefined ? (
          <>
            <div class="my-heater">
              <MyHeaterLine
                fit={fit}
                heat_kW={asked.heat_kW}
                opens={view !== "logbook"}
                onHeaters={setMy}
              />
              <SunButton />
            </div>
            {linked && <linked.Notice hasMine={Boolean(my?.mine)} onEnd={endLink} />}
            {view === "card" ? (
              <Card key={whose} fit={fit} mine={mine} linked={linked?.card} />
            ) : (
              <ViewOf
                key={whose}
                place={place}
                fit={fit}
                question={asked}
                mine={mine}
                onQuestion={ask}
                onShared={() => void follow()}
                onLogged={() => setLinked(null)}
              />
            )}
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
        <ThemeChoice />
        <LanguageChoice />
      </footer>
    </>
  );
}

const VIEWS = { start: Start, trip: Trip, onsite: OnSite, logbook: Logbook, atlas: Atlas };

function ViewOf({ place, ...props }: { place: Place } & ComponentProps<typeof OnSite>) {
  const View = VIEWS[place];
  return <View {...props} />;
}

// The schemas that come later would compile themselves with eval, which the page's policy forbids: even the attempt is reported.
Object.assign(globalThis, { __zod_globalConfig: { jitless: true } });
applyChosenTheme();
document.documentElement.lang = language;
document.documentElement.dir = direction;
const root = document.getElementById("app");
if (root) {
  root.replaceChildren();
  render(<App />, root);
}
