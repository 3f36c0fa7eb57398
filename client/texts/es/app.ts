/** The page itself and its first views, in Spanish. */
export const t: typeof import("../en/app.ts").t = {
  name: "Hypsotune",
  tagline: "Ajustes iniciales para calefactores de aire diésel",
  skip: "Saltar al contenido",
  language: "Idioma",
  theme: {
    title: "Colores",
    system: "Como el sistema",
    light: "Claro",
    dark: "Oscuro",
    contrast: "Alto contraste",
  },
  demo: "Datos inventados: ninguno es real.",
  places: {
    start: "Inicio",
    trip: "Viaje",
    onsite: "In situ",
    logbook: "Bitácora",
    atlas: "Atlas",
  },
  low: "Potencia mínima",
  high: "Potencia máxima",
  endWord: { low: "potencia mínima", high: "potencia máxima" },
  unit: "unidad",
  rpm: "rpm",
  loading: "Consultando el atlas …",
  partMissing:
    "No se pudo cargar esta parte de la página. Vuelve a cargarla cuando tengas conexión.",
  unreachable:
    "No se puede conectar con el atlas. Las cifras salen del cálculo guardado en este navegador.",
  notReached: "No se puede conectar con el atlas. Comprueba la conexión e inténtalo de nuevo.",
  noFit:
    "No se puede conectar con el atlas, y este navegador aún no tiene guardado ningún cálculo. Inténtalo de nuevo cuando tengas conexión.",
  retry: "Intentar de nuevo",
  alarm: {
    open: "¡Alarma de CO dentro!",
    title: "Todos fuera. Ya.",
    call: "Después, desde fuera, llama a emergencias:",
    local: "o al número local",
    outside: "Cuando todos estén fuera",
  },
  safety: {
    title: "El monóxido de carbono mata",
    more: "Todas las advertencias",
    brief:
      "Solo un punto de partida. El monóxido de carbono mata: ajusta al aire libre y nunca duermas sin un detector de CO.",
    notice:
      "El monóxido de carbono mata. Solo un punto de partida, nunca un ajuste acabado. Ajusta al aire libre, vigila el medidor junto al escape y ten en marcha, dondequiera que se duerma, un detector de CO aparte y certificado: nunca el medidor del escape. Que el detector calle no significa que no haya monóxido de carbono. Alarma, dolor de cabeza o mareo: todos fuera, al aire fresco, y después pide ayuda.",
    notFor: "No sirve para",
    not_for: [
      "ajustar en un garaje, una tienda de campaña, una cabaña o cualquier espacio cerrado, ni con alguien dormido dentro",
      "sustituir los ajustes del fabricante donde no se permite cambiarlos: algunas instalaciones homologadas no se pueden modificar en absoluto",
      "juzgar si se puede respirar el aire sin peligro",
    ],
    deferTo: "Esto va primero",
    defer_to: [
      "el manual del fabricante",
      "la normativa local y las reglas de homologación de vehículos y embarcaciones",
      "los profesionales autorizados de calefacción y electricidad",
    ],
  },
  site: {
    title: "Dónde",
    place: "Lugar",
    assumed: "supuesta",
    choose: "Elegir lugar",
    tonight: "esta noche",
    placeHint: "Población, paso o campamento",
    elevation: "Altitud",
    positionLabel: "O donde estás",
    position: "Usar mi ubicación",
    positionNote: "Tu ubicación no sale de este dispositivo.",
    positionDenied: "La ubicación está desactivada o bloqueada. Escribe una altitud o un lugar.",
    positionWait: "Esperando la ubicación …",
    noPlace: (name: string) =>
      `Ningún lugar se llama «${name}». Revisa la ortografía o escribe la altitud.`,
    similar: (name: string) =>
      `Ningún lugar se llama «${name}». Elige un nombre parecido o escribe la altitud.`,
    results: (n: number) => (n === 1 ? "1 lugar" : `${n} lugares`),
    unknownElevation: "altitud desconocida",
    estimate: (half: string) =>
      `Estimada, ±${half}. Si un cartel, un mapa o tu GPS dice otra cosa, escribe esa.`,
    outOfRange: (lowest: string, highest: string) => `El atlas responde de ${lowest} a ${highest}.`,
    notNumber: "Escribe un número.",
  },
  air: {
    title: "Aire de la noche",
    tunedTitle: "Aire al ajustar",
    tuned: "Temperatura al ajustar",
    temperature: "Temperatura nocturna",
    temperatureShort: "El aire frío es más denso: importa tanto como la altitud.",
  },
  heater: {
    title: "Calefactor",
    heat: "Tamaño del calefactor",
    heatOption: (kW: number) => `${kW} kW`,
    lowFan: "Velocidad del ventilador, potencia mínima, rpm",
    highFan: "Velocidad del ventilador, potencia máxima, rpm",
    fanWhy:
      "El tamaño es la potencia máxima de la etiqueta. Mejor escribe tus propias velocidades: si no, se toman las habituales de ese tamaño.",
    dose: "Combustible por pulso, µL",
    doseWhy: "Lo que da la bomba en cada pulso. Si lo sabes, verás también consumo y calor.",
  },
  answer: {
    title: "Ajustes iniciales",
    at: (place: string, elevation: string) => `${place}, ${elevation}`,
    elevationOnly: (elevation: string) => `a ${elevation}`,
    or: (hz: string, rpm: string) => `o ${hz} Hz, ${rpm} rpm`,
    certainty: { quite: "Bastante seguro", fairly: "Más o menos seguro", unsure: "Inseguro" },
    within: (level: string, half: string) =>
      `${level} de cada 10 veces lo mejor está en estos intervalos (±${half} %).`,
    now: (hz: string) => `ahora ${hz}`,
    finer: "Más sobre aire y calefactor",
    fanAt: (rpm: string) => `ventilador a ${rpm} rpm`,
    spoken: (end: string, hz: string, level: string, lower: string, upper: string) =>
      `${end}: empieza con ${hz} hercios; ${level} de cada 10 veces lo mejor está entre ${lower} y ${upper}.`,
    tuneHere: "Ajustar aquí con un medidor de CO",
    printCard: "Imprimir la ficha",
    onMap: "Elegir en el mapa",
    cannot: "Estas cifras no casan entre sí. Revisa las velocidades y la presión.",
  },
};
