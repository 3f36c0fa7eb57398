/** Words about simulated lies, in Spanish. */
export const poisoningStudy: typeof import("../en/poisoning-study.ts").poisoningStudy = {
  title: "Lo que las mentiras cambian en la media",
  intro:
    "Atlas inventados, y alguien que envía ajustes falsos a propósito: de un 10 a un 35 % demasiado pobres o demasiado ricos, desde muy arriba o desde muy abajo. Los propietarios nuevos esperan seis días hasta que sus ajustes cuentan, unos pocos por semana; un cálculo que mueve la media un 2 % en una semana queda retenido. La tabla dice cuánto se movió la media publicada en cualquier momento, a cinco altitudes y con ambas potencias.",
  liars: {
    "fresh keys": "Un remitente, 29 claves nuevas en una semana",
    "one key": "Un remitente, 29 ajustes con una clave en una semana",
    "many keys": "Un remitente, 300 claves nuevas en una semana",
    "five weeks": "Un remitente, 145 claves nuevas en cinco semanas",
    "counted at once": "Un remitente, 29 claves nuevas en una semana, si nadie esperara",
    "three networks": "Un remitente desde tres redes, 29 claves nuevas en una semana",
    hundred: "100 remitentes, una clave nueva cada uno en una semana",
  },
  who: "Quién miente",
  honest: "Propietarios honrados",
  attacks: "Ataques",
  median: "La media se movió, %, mediana",
  most: "Como máximo, %",
  goal: "Meta, %",
  below: (pct) => `menos de ${pct}`,
  noGoal: "ninguna",
  heldBack: "Retenido en",
  newcomers: "Cuánto esperan los nuevos honrados",
  newcomersIntro:
    "Hasta que la media publicada conoce su ajuste. Pocos llegan a contar cada semana, así que muchos a la vez esperan más, y los mentirosos de muchas redes que llegaron antes alargan aún más la cola.",
  aWeek: "Nuevos por semana",
  meanwhile: "Mentirosos entretanto",
  days: "Días, mediana",
  mostDays: "Días, como máximo",
  inAWeek: "En una semana",
  of: (n, all) => `${n} de ${all}`,
};
