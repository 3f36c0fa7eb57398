/** The Logbook view, in Spanish. */
export const logbookWords: typeof import("../en/logbook.ts").logbookWords = {
  title: "Diario",
  intro:
    "Sus calefactores y lo que hizo con ellos. Se queda en este navegador: nada se envía, salvo que comparta un ajuste.",
  empty:
    "Aún no hay calefactor. Añada el suyo y anote sus ajustes y limpiezas, o traiga un archivo exportado.",
  lost: (n: number) =>
    `Este navegador ha vaciado su memoria: ${n === 1 ? "se ha perdido 1 entrada" : `se han perdido ${n} entradas`}. Traiga abajo su última exportación.`,
  lostUnderstood: "Entendido",
  mayWipe: "Un navegador puede vaciar su memoria. Exporte de vez en cuando.",
  store: {
    forbidden:
      "Este navegador prohíbe guardar datos aquí (ventana privada o datos de sitios bloqueados): el diario no se puede guardar. Permita el almacenamiento para esta página o use otra ventana.",
    full: "A este navegador no le queda sitio: no se guardó y nada ha cambiado. Libere espacio o quite fotos y vuelva a intentarlo.",
  },
  heater: {
    title: "Calefactores",
    choose: "Calefactor",
    add: "Añadir un calefactor",
    edit: "Cambiar este calefactor",
    remove: "Quitar este calefactor",
    removeSure: (n: number) =>
      n === 1 ? "Quitarlo con su 1 entrada" : `Quitarlo con sus ${n} entradas`,
    removed: (name: string) => `${name}: quitado.`,
    name: "Cómo lo llama",
    tank: "Depósito, L (opcional)",
    dose: "Dosis, µL por pulso (opcional)",
    lowFan: "Velocidad del ventilador, extremo bajo, rpm (opcional)",
    highFan: "Velocidad del ventilador, extremo alto, rpm (opcional)",
    supply: "Tensión de alimentación, V (opcional)",
    hours: "Horas de marcha hasta ahora (opcional)",
    line: (kW: string) => `${kW} kW`,
    save: "Guardar este calefactor",
  },
  kinds: { tune: "Ajuste", cleaning: "Limpieza", note: "Nota" },
  entry: {
    title: "Entradas",
    none: "Aún no hay entradas de este calefactor.",
    add: {
      tune: "Anotar un ajuste",
      cleaning: "Anotar una limpieza",
      note: "Escribir una nota",
    },
    newTitle: { tune: "Un ajuste", cleaning: "Una limpieza", note: "Una nota" },
    at: "Día y hora",
    hours: "Horas en el contador (opcional)",
    hoursWhy: "Con ellas se sigue la deriva.",
    fuel: "Combustible desde la entrada anterior, L (opcional)",
    notes: "Notas (opcional)",
    photo: "Foto (opcional)",
    photoHint: "Se reduce y se libra de lo que la cámara escribió en ella.",
    photoDrop: "Quitar la foto",
    photoBad: "Este archivo no es una imagen legible.",
    photoAlt: (when: string) => `Foto de la entrada del ${when}`,
    site: "Dónde",
    meter: "Medidor",
    meterWhy: "El CO solo se compara con el mismo medidor en el mismo punto.",
    meterName: "Cómo lo llama (opcional)",
    reading: "El medidor muestra",
    readings: {
      co_ppm: "un número",
      co_below_ppm: "nada: por debajo",
      co_above_ppm: "su tope: por encima",
    },
    readingOf: {
      co_ppm: "CO final, ppm",
      co_below_ppm: "Su mínimo, ppm",
      co_above_ppm: "Su tope, ppm",
    },
    save: "Guardar esta entrada",
    cancel: "Dejarlo",
    edit: "Cambiar",
    remove: "Quitar",
    editThis: (what: string) => `Cambiar: ${what}`,
    removeThis: (what: string) => `Quitar: ${what}`,
    removed: (what: string) => `${what}: quitado.`,
    undo: "Deshacer",
    undone: "Ha vuelto.",
    kept: "Guardado en este navegador.",
    fix: "Aún hay campos por corregir.",
    setTo: (hz: string, rpm: string) => `${hz} Hz, ${rpm} rpm`,
    co: (ppm: string) => `${ppm} ppm`,
    below: (ppm: string) => `menos de ${ppm} ppm`,
    above: (ppm: string) => `más de ${ppm} ppm`,
    power: (setting: string) => `potencia ${setting}`,
    swept: (hz: string, lower: string, upper: string) =>
      `mínimo cerca de ${hz} Hz, entre ${lower} y ${upper} Hz`,
    density: (density: string) => `aire ${density} kg/m³`,
    atHours: (hours: string) => `a las ${hours} h`,
    fuelLine: (litres: string) => `${litres} L desde la entrada anterior`,
    meterLine: (kind: string, distance: string) => `${kind}, a ${distance} m del escape`,
  },
  check: {
    missing: "Esto hace falta.",
    number: "debe ser un número",
    between: (least: string, most: string) => `debe estar entre ${least} y ${most}`,
    classStep: "debe ir en pasos de 0,5 kW",
    when: "debe ser día y hora como 2026-11-05T20:30:00Z",
    oneReading: "hace falta una de las tres lecturas: un número, el mínimo o el tope",
    oneReadingOnly: "solo puede darse una de las tres lecturas",
    pair: "latitud y longitud van juntas",
    onePressure: "presión de estación o a nivel del mar, no ambas",
    bothEnds: "Un ajuste tiene un lugar, un extremo bajo y un extremo alto.",
    unknown: "no se conoce aquí: mal escrito o de una versión más nueva",
    text: "debe ser texto, y no demasiado largo",
    choice: "no es ninguna de las opciones",
    photo: "debe ser una URL de datos de una imagen JPEG, PNG o WebP de 2 MB como mucho",
  },
  share: {
    share: "Compartir este ajuste",
    shareThis: (what: string) => `Compartir este ajuste: ${what}`,
    what: (elevation: string) =>
      `Se envía: calefactor, aire, ambos extremos con su CO, cómo se encontraron, medidor, mes y ${elevation}; de la posición, solo el centro de su celda del mapa. No se envía: nombre del lugar, día, notas, foto, horas.`,
    cannot:
      "Una lectura en el tope del medidor no es un CO final: este ajuste no se puede compartir.",
    looks: "Esto parece un descuido. Cambie la entrada o envíela tal cual: quedaría retenida.",
    cancel: "No compartir",
    shared: "Compartido",
    waits: "Espera para enviarse; sale solo, una vez, en cuanto se alcance el atlas.",
    gone: "Iba a compartirse, pero ni espera ni tiene recibo en este navegador: compártalo de nuevo.",
    discard: "No enviarlo después de todo",
    revise: "Enviarlo como está ahora la entrada",
    revised: (verdict: string) => `Corregido: ${verdict}.`,
    arrived: (verdict: string) => `Ha llegado: ${verdict}.`,
    receiptNotKept: "El recibo se guarda con la entrada.",
    notThere: "El atlas ya no tiene ese ajuste: la entrada queda libre de él.",
    openShare: "Los recibos y más están en Compartir.",
  },
  drift: {
    title: "Qué dice la deriva",
    howTitle: "Cómo se sabe",
    how: "Los ajustes se comparan en la línea propia del calefactor según la densidad del aire; el CO, solo con mezcla parecida, con el mismo medidor en el mismo punto y desde la última limpieza. Se cuenta con que se mira tras cada entrada: si no hay nada, una frase así aparece en menos de 5 de cada 100 temporadas. Los intervalos valen en 95 de cada 100 casos, por mucho que se mire.",
    none: "Nada que decir aún: hacen falta varios ajustes con horas (o combustible) y medidor descrito desde la última limpieza.",
    co: (from: string, to: string, amount: string) =>
      `Su mejor lectura con esta mezcla subió de ${from} a ${to} ppm en ${amount}: hollín o una toma de aire obstruida es más probable que el aire.`,
    coQuiet: (n: number, amount: string) =>
      `${n} lecturas comparables en ${amount}: ninguna subida de CO que los datos sostengan.`,
    change: (factor: string, lower: string, upper: string) =>
      `Cambio: ${factor} veces; entre ${lower} y ${upper} veces.`,
    changeOpen: (factor: string) =>
      `Cambio hasta ahora: ${factor} veces; muy pocas lecturas para un intervalo.`,
    richer: (pct: string, amount: string) =>
      `Con aire parecido, su mejor frecuencia de bomba subió un ${pct} % en ${amount}: ha cambiado algo que no es el aire.`,
    leaner: (pct: string, amount: string) =>
      `Con aire parecido, su mejor frecuencia de bomba bajó un ${pct} % en ${amount}: entra menos aire, o ha cambiado otra cosa.`,
    mixtureQuiet: (n: number, amount: string) =>
      `${n} ajustes en ${amount}: ningún cambio de la mejor mezcla que los datos sostengan.`,
    mixtureInterval: (lower: string, upper: string) => `Entre ${lower} y ${upper} %.`,
    amount: {
      hours: (n: string) => `${n} horas`,
      fuel_L: (n: string) => `${n} L de combustible`,
    },
    floor: (n: number) =>
      n === 1
        ? "1 lectura quedó bajo el mínimo del medidor: no es un número, así que se omite, y una subida se nota más tarde."
        : `${n} lecturas quedaron bajo el mínimo del medidor: no son números, así que se omiten, y una subida se nota más tarde.`,
    ceiling: (n: number) =>
      n === 1
        ? "1 lectura estaba en el tope del medidor: no es un número, así que se omite."
        : `${n} lecturas estaban en el tope del medidor: no son números, así que se omiten.`,
    risen: (ppm: string, floor: string) =>
      `El medidor muestra ahora ${ppm} ppm donde antes no mostraba nada (menos de ${floor}). Una lectura no es un veredicto: lea otra vez.`,
    noMeter: (n: number) =>
      n === 1
        ? "1 ajuste no nombra medidor con su distancia: su CO no se compara."
        : `${n} ajustes no nombran medidor con su distancia: su CO no se compara.`,
    stepsTitle: "Próximos pasos habituales, según el manual del fabricante",
    steps: [
      "Mire la toma de aire: filtro, tubo, nidos, nieve, hojas.",
      "Mire el escape: tubo aplastado o combado, agua en un punto bajo, hollín en la boca, uniones firmes.",
      "Déjelo un rato a plena potencia, al aire libre, si el manual lo dice.",
      "Rejilla, piezas de incandescencia y quemador: que se miren, limpien o cambien según el manual del fabricante o por un profesional autorizado.",
      "Anote la limpieza, para que empiece un tramo nuevo.",
    ],
  },
  supply: {
    title: "Combustible y batería de esta noche",
    elevation: "Altitud esta noche",
    hours: "Horas",
    share: "Potencia, % del rango",
    fuel: (litres: string, hours: string) => `${litres} L para ${hours} h`,
    heat: (kW: string) => `unos ${kW} kW al recinto`,
    tank: (hours: string) => `Un depósito lleno dura ${hours} h.`,
    noTank: "Con el tamaño del depósito, aquí estarían sus horas.",
    battery: (at12: string, at24: string) => `${at12} Ah a 12 V, o ${at24} Ah a 24 V`,
    starts: "Cada arranque toma 8–12 A a 12 V, o 4–6 A a 24 V.",
    logged: (day: string, low: string, high: string) =>
      `Combustible según su ajuste del ${day}, ${low} y ${high} Hz, y la dosis de este calefactor.`,
    retuned: (low: string, high: string, litres: string) =>
      `Ajustado al aire de esta noche, a unos ${low} y ${high} Hz, serían ${litres} L.`,
    dose: "Combustible según la frecuencia de bomba del ajuste de partida en el aire de esta noche y su dosis.",
    class:
      "Combustible según lo que suele quemar la clase, en el aire de esta noche: su dosis lo diría mejor.",
    assumes: (minutes: number) =>
      `Se da por supuesto: de 0,6 A en el extremo bajo a 3,5 A en el alto a 12 V, 8–12 A en el arranque (práctica común, sin fuente) de ${minutes} minutos (valor propio); 9,9 kWh por litro, el 80 % al recinto; potencia constante.`,
    cannot: "Estas cifras no pueden darse juntas. Revise altitud, horas y potencia.",
  },
  files: {
    title: "Exportar e importar",
    json: "Exportar todo (JSON, con fotos)",
    csv: "Exportar como CSV, sin fotos",
    note: "Los archivos contienen sus lugares y los recibos de los ajustes compartidos: quien tiene un recibo puede retirar ese ajuste. Guárdelos para usted.",
    bring: "Traer un archivo: JSON o CSV",
    bringHint: "Lo que ya está se queda; de dos copias de una entrada, la cambiada más tarde.",
    brought: (added: number, changed: number, same: number) =>
      `${added} nuevas, ${changed} cambiadas, ${same} como estaban.`,
    refused: (reason: string) => `${reason}. No se ha tomado nada.`,
    line: (line: number, reason: string) => `Línea ${line}: ${reason}. No se ha tomado nada.`,
    empty: "El archivo está vacío",
    large: (MB: number) => `El archivo pasa de ${MB} MB`,
    notJson: "esto no es JSON legible",
    notLogbook: "El archivo es JSON, pero no un diario de esta página",
    newer:
      "El archivo es de una versión más nueva de esta página: recargue la página y vuelva a intentarlo",
    head: "la primera línea debe nombrar al menos las columnas kind, id y changed_at",
    badCsv:
      "esto no se puede leer como CSV: sobra o falta un campo, o unas comillas quedaron abiertas",
    kind: "kind debe ser heater, tune, cleaning o note",
    twice: (id: string) => `la id ${id} está dos veces`,
    noHeater: (id: string) => `su calefactor (${id}) no está ni en el archivo ni aquí`,
    field: (field: string, reason: string) => `${field}: ${reason}`,
  },
  cautions: {
    title: "Antes de ponerle la mano",
    lines: [
      "Deje que termine de enfriarse; nunca le corte la corriente en caliente.",
      "Nada de repostar con el calefactor caliente o en marcha.",
      "Uniones del escape, toma de aire y conductos de combustible: mírelos tras cualquier trabajo.",
      "Fusible y cable del tamaño que pide el fabricante.",
    ],
  },
};
