/** The Atlas and its pages on the data, in Spanish. */
export const dataWords: typeof import("../en/data.ts").dataWords = {
  pagesLabel: "Páginas del atlas",
  pages: {
    map: "Mapa",
    scaling: "Curva",
    bands: "Intervalos",
    method: "Método",
    download: "Todos los ajustes",
    share: "Compartir",
    style: "Signos",
  },
  title: "Los datos",
  intro:
    "Todo lo que el atlas sabe es abierto. Vacío quiere decir desconocido, nunca 0; cada columna lleva su unidad en el nombre.",
  files: {
    csv: "Todos los ajustes aceptados, CSV",
    geojson: "Todos los ajustes aceptados, GeoJSON",
    parquet: "Todos los ajustes aceptados, Parquet",
    data: "Archivos de este estado de los datos que nunca cambian, con sus sumas de verificación y cómo citarlos",
    dictionary: "Qué significan las columnas, y las advertencias",
    metadata: "Advertencias y columnas de ese CSV, para programas",
    fit: "El cálculo publicado",
    openapi: "Descripción de la interfaz (OpenAPI 3.1)",
  },
  method: "Cómo se hace",
  methodText: [
    "Por tamaño de calefactor y potencia: ln(frecuencia de la bomba ÷ velocidad del ventilador) = a + b · ln(densidad del aire ÷ 1,225). El ventilador mueve volumen, así que la masa de aire va con su velocidad por la densidad; la bomba mueve volumen por pulso. Si todos reajustaran a la perfección, b sería 1; con gente de verdad es menos.",
    "Todo lo demás es un único modelo estadístico: los calefactores difieren, algunos propietarios nunca reajustan, otros dan pies por metros o cometen otros errores, y unos pocos quizá se pusieron de acuerdo. El modelo calcula la probabilidad de cada caso y cuenta a cada propietario una vez; muchos en un mismo lugar y mes cuentan menos cada uno. Un ajuste que probablemente es un error no cuenta, con el motivo, y vuelve a contar cuando otros posteriores lo apoyan. La página Método lo explica, primero con palabras sencillas y después para estadísticos.",
  ],
  methodLanguage: "Esta página solo existe en inglés.",
  privacy: "Privacidad",
  privacyText:
    "Sin cuenta, sin nombre, sin dirección. Una ubicación se convierte en tu navegador en una celda de unos 250 km². Tu clave es aleatoria y solo se guarda como resumen cifrado. Se guardan meses, no días, altitudes a 10 m, aire a 1 °C y 1 hPa, y ningún texto libre. Se muestran altitudes a 100 m y celdas con cinco propietarios o más; si son menos, aparecen dentro de una celda mayor. Quien ha ajustado en varios lugares solo aparece en celdas de unos 87 000 km², con el año: nadie ve con más detalle por dónde anduvo. El seudónimo es aleatorio y desaparece con tu último ajuste. Dos cosas del archivo revelan un día y no se muestran a nadie: desde cuándo espera un propietario nuevo y con qué versión del modelo se comparó un ajuste. Retirado quiere decir borrado.",
  licence: "Licencias y créditos",
  licences: [
    "Ajustes aportados: CC0 1.0.",
    "Código: MIT.",
    "Lugares y altitudes: GeoNames, CC BY 4.0.",
    "Altitudes entre lugares: una lista de aeródromos y un relieve de la Tierra, ambos de dominio público.",
    "Costas, fronteras, lagos y ríos: Natural Earth, dominio público.",
    "Letra: Noto Sans, SIL Open Font License.",
  ],
};
