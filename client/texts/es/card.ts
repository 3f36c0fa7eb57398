/** Words of the Card view and of the card itself, in Spanish. */
export const cardWords: typeof import("../en/card.ts").cardWords = {
  title: "Una tarjeta para el calefactor",
  intro:
    "La frecuencia de bomba de ambos extremos según altitud y temperatura nocturna, para sus velocidades de ventilador, en papel: para cuando el teléfono esté sin batería.",
  fields: {
    elevationFrom: "Altitud mínima",
    elevationTo: "Altitud máxima",
    temperatureFrom: "Noche más fría",
    temperatureTo: "Noche más cálida",
    paper: "Papel",
    outOfRange: (least, most) => `De ${least} a ${most}.`,
    atLeast: (least) => `Al menos ${least}: el otro extremo del intervalo queda por debajo.`,
    atMost: (most) => `Como mucho ${most}: el otro extremo del intervalo queda por encima.`,
    fansSwapped:
      "En el extremo bajo el ventilador suele girar más despacio. Compruebe que no estén cambiados.",
  },
  papers: {
    a6: "A6, dos caras",
    index: "4 × 6 pulgadas, dos caras",
    a5: "A5, dos caras",
    a4: "A4, para plegar",
    letter: "Carta (US letter), para plegar",
  },
  print: "Imprimir la tarjeta",
  printHint:
    "En el diálogo de impresión elija el mismo papel, tamaño real (100 %), sin encabezados ni pies; o guárdela como PDF. Basta en blanco y negro.",
  preview: "La tarjeta tal como se imprimirá",
  cannot: "Estas cifras no pueden darse juntas. Revise las velocidades del ventilador y la dosis.",
  heading: (kW) => `Ajustes de partida, calefactor de ${kW} kW`,
  dose: (dose, perHz) => `Dosis ${dose} µL: cada Hz quema ${perHz} L/h.`,
  demo: "Datos inventados: ningún ajuste de aquí es real.",
  prior: "Nadie ha ajustado aún esta clase: solo física y práctica común, bandas anchas.",
  tunes: (tunes, contributors) => `De ${tunes} ajustes de ${contributors} colaboradores.`,
  fit: (version, date) => `Ajuste estadístico ${version}, publicado el ${date}.`,
  noFit: "Aún no hay ajuste estadístico publicado.",
  printed: (date) => `Impreso el ${date}.`,
  end: (end, rpm) => `${end}: frecuencia de bomba en Hz, ventilador a ${rpm} rpm`,
  night: (unit) => `Temperatura nocturna, ${unit}`,
  elevation: (unit) => `Altitud, ${unit}`,
  share: (level) => `${level} de 100`,
  bands: "Banda, %",
  reach: (below, above) => `−${below} +${above}`,
  bandsMean:
    "Banda: así de lejos, por debajo y por encima, queda el buen ajuste de 80 (95) de cada 100 calefactores más, también el suyo.",
  extrapolated: "( ) Aire en el que nadie ha ajustado: fíese menos.",
  notes: {
    heater: "Calefactor",
    place: "Lugar",
    date: "Fecha",
    found: (end) => `Hallado, ${end}, Hz`,
  },
  holds: (climb, warmth) =>
    `Para este calefactor, lugar y fecha: compruebe de nuevo tras ${climb} o ${warmth}.`,
  nomogram: {
    title: "Entre las filas: una regla",
    name: (low, high) =>
      `Tres escalas: altitud, frecuencia de bomba (extremo bajo a ${low} rpm, alto a ${high} rpm), temperatura nocturna. Las tablas dan las mismas cifras.`,
    how: "Coloque una regla desde la altitud (izquierda) por la temperatura nocturna (derecha): corta la línea central en las frecuencias de ambos extremos.",
    example: (elevation, temperature, low, high) =>
      `Punteado: ${elevation}, ${temperature} dan ${low} y ${high} Hz.`,
    error: (pct) =>
      `Para presión estándar y 50 % de humedad; dibujado con error menor de ${pct} % frente al atlas.`,
    dashed: "Discontinua: aire en el que nadie ha ajustado.",
    rate: "Hz",
  },
  use: {
    title: "Sin teléfono",
    steps: [
      "Fila por altitud, columna por la hora más fría; entre dos, un valor intermedio.",
      "Fije ambos extremos, ventilador como impreso. Otra velocidad: cambie en proporción.",
      "Al aire libre, medidor de CO junto al escape: pasos de 0,1 Hz hasta que la lectura estable suba a ambos lados de la más baja. Quédese en medio: abajo, del lado rico; arriba, más pobre. Llama inestable o humo: vuelva atrás.",
    ],
  },
  safety: {
    title: "El monóxido de carbono mata",
    front: "Más al dorso.",
    lines: [
      "Solo un punto de partida. Ajuste al aire libre: nunca en garaje, tienda o cabina, ni con alguien durmiendo dentro.",
      "Alarma de CO certificada aparte donde se duerme, nunca el medidor del escape; una alarma muda no significa que no haya. Alarma, dolor de cabeza, mareo: todos fuera, luego pedir ayuda.",
      "Escape caliente. Deje que el calefactor se enfríe; no le corte la corriente.",
      "Primero: manual del fabricante, normas locales, homologación de vehículos y barcos, y técnicos con licencia en calefacción y electricidad. Algunas instalaciones homologadas no pueden modificarse.",
    ],
  },
};
