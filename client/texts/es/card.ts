/** Words of the Card view and of the card itself, in Spanish. */
export const cardWords: typeof import("../en/card.ts").cardWords = {
  title: "Una ficha para el calefactor",
  intro:
    "Las frecuencias de la bomba a potencia mínima y máxima según altitud y temperatura nocturna, para tus velocidades del ventilador, en papel: para cuando el teléfono esté sin batería.",
  fields: {
    elevationFrom: "Altitud mínima",
    elevationTo: "Altitud máxima",
    temperatureFrom: "Noche más fría",
    temperatureTo: "Noche más cálida",
    paper: "Papel",
    outOfRange: (least, most) => `De ${least} a ${most}.`,
    atLeast: (least) => `Al menos ${least}: el valor menor queda por debajo.`,
    atMost: (most) => `Como mucho ${most}: el valor mayor queda por encima.`,
    fansSwapped:
      "A potencia mínima el ventilador suele girar más despacio. Comprueba que no estén cambiados.",
  },
  papers: {
    a6: "A6, dos caras",
    index: "4 × 6 pulgadas, dos caras",
    a5: "A5, dos caras",
    a4: "A4, para plegar",
    letter: "Carta (US letter), para plegar",
  },
  paperHint:
    "A6 y 4 × 6 pulgadas se leen en la mano; para leer a medio metro elige A5 o más grande.",
  print: "Imprimir la ficha",
  printHint:
    "En el diálogo de impresión elige el mismo papel, tamaño real (100 %), sin encabezados ni pies; o guárdala como PDF. Basta en blanco y negro.",
  code: {
    title: "El código abre esta ficha, al día. A mano:",
    titleWithoutOwn: "El código abre esta ficha sin tus ajustes propios. A mano:",
    name: "Código con la dirección de esta ficha",
    withoutOwn: "El código y el enlace contienen esta ficha sin tus ajustes propios.",
  },
  preview: "La ficha tal como se imprimirá",
  cannot: "Estas cifras no casan entre sí. Revisa las velocidades y el combustible por pulso.",
  heading: (kW) => `Ajustes iniciales, calefactor de ${kW} kW`,
  dose: (dose, perHz) => `Combustible por pulso ${dose} µL: cada Hz gasta ${perHz} L/h.`,
  demo: "Datos inventados: ninguno es real.",
  prior: "Nadie ha ajustado aún este tamaño: estimado con física, intervalos anchos.",
  tunes: (tunes, contributors) => `De ${tunes} ajustes de ${contributors} propietarios.`,
  ownTunes: (tunes, contributors, own) =>
    `De ${tunes} ajustes de ${contributors} propietarios y ${own === 1 ? "1 tuyo" : `${own} tuyos`}.`,
  ownAlone: (own) =>
    `De ${own === 1 ? "1 ajuste tuyo" : `${own} ajustes tuyos`} y una estimación con física: intervalos anchos.`,
  fit: (version, date) => `Cálculo ${version}, publicado el ${date}.`,
  noFit: "Aún no hay ningún cálculo publicado.",
  printed: (date) => `Impreso el ${date}.`,
  end: (end, rpm) => `${end}: frecuencia de la bomba en Hz, ventilador a ${rpm} rpm`,
  night: (unit) => `Temperatura nocturna, ${unit}`,
  elevation: (unit) => `Altitud, ${unit}`,
  inTen: (level) => `${level} de 10`,
  inHundred: (level) => `${level} de 100`,
  bands: "Intervalo, %",
  reach: (below, above) => `−${below} +${above}`,
  bandsMean:
    "Intervalo: hasta dónde, por debajo y por encima, queda la mejor frecuencia de 8 de cada 10 (95 de cada 100) calefactores.",
  bandsMine:
    "Intervalo: hasta dónde, por debajo y por encima, queda tu mejor frecuencia, 8 de cada 10 (95 de cada 100) veces.",
  extrapolated: "( ) Nadie ha ajustado en un aire así: fíate menos.",
  notes: {
    heater: "Calefactor",
    place: "Lugar",
    date: "Fecha",
    found: (end) => `${end}, Hz`,
  },
  holds: (climb, warmth) =>
    `Para este calefactor, lugar y fecha: comprueba de nuevo tras ${climb} o ${warmth}.`,
  nomogram: {
    title: "Entre las filas: una regla",
    name: (low, high) =>
      `Tres escalas: altitud, frecuencia de la bomba (potencia mínima a ${low} rpm, máxima a ${high} rpm), temperatura nocturna. Las tablas dan las mismas cifras.`,
    how: "Pon una regla desde la altitud (izquierda) hasta la temperatura nocturna (derecha): corta la línea central en las dos frecuencias.",
    example: (elevation, temperature, low, high) =>
      `Punteado: ${elevation}, ${temperature} dan ${low} y ${high} Hz.`,
    error: (pct) =>
      `Para presión estándar y 50 % de humedad; dibujado con error menor de ${pct} % frente al atlas.`,
    dashed: "Discontinua: nadie ha ajustado en un aire así.",
    rate: "Hz",
  },
  use: {
    title: "Sin teléfono",
    steps: (hz) => [
      "Fila: tu altitud. Columna: la hora más fría de la noche. Entre dos, toma un valor intermedio.",
      "Ajusta potencia mínima y máxima, ventilador como está impreso. Otra velocidad: cambia la frecuencia en proporción.",
      `Al aire libre, con medidor de CO junto al escape: pasos de ${hz} Hz hasta que la lectura estable suba a ambos lados. Quédate en medio: a potencia mínima, más bien rica; a máxima, más pobre. Si la llama falla o hay humo, vuelve atrás.`,
    ],
  },
  safety: {
    title: "El monóxido de carbono mata",
    front: "Más al dorso.",
    lines: [
      "Solo un punto de partida. Ajusta al aire libre: nunca en garaje, tienda de campaña o cabaña, ni con alguien dormido dentro.",
      "Donde se duerma, un detector de CO aparte y certificado, nunca el medidor del escape; que calle no significa que no haya CO. Alarma, dolor de cabeza, mareo: todos fuera, y después pide ayuda.",
      "El escape quema. Deja que el calefactor se enfríe solo; nunca le cortes la corriente.",
      "Van primero el manual del fabricante, la normativa local, la homologación de vehículos y barcos, y los profesionales autorizados. Algunas instalaciones homologadas no se pueden modificar en absoluto.",
    ],
  },
};
