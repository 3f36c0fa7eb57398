/** Fitting the open data again in the browser, in Spanish. */
export const again: typeof import("../en/again.ts").again = {
  title: "Repetir el cálculo aquí",
  intro:
    "No hace falta creer las cifras publicadas: este navegador puede traer todos los ajustes aceptados y hacer el ajuste estadístico él mismo, con el mismo método. Cada cifra debe salir igual hasta el último dígito.",
  button: "Repetir el cálculo aquí",
  working: "Trayendo los ajustes y calculando …",
  same: (version: string, rows: string, groups: number) =>
    `Igual hasta el último dígito: cada cifra ${groups === 1 ? "de la única clase y extremo" : `de las ${groups} clases y extremos`} del ajuste estadístico ${version}, repetida aquí con ${rows} filas.`,
  differs: (version: string, differing: number, of: number) =>
    `No es igual: en ${differing} de ${of} clases y extremos alguna cifra difiere del ajuste estadístico ${version}.`,
  moving: (version: string) =>
    `El atlas está publicando un ajuste estadístico más nuevo que ${version}: entretanto llegaron o se fueron ajustes. Inténtelo de nuevo en un momento.`,
  otherCode: (version: string) =>
    `El ajuste estadístico ${version} se hizo con otros parámetros que los de esta página. Vuelva a cargarla e inténtelo de nuevo.`,
  nothing: "Aún no hay ajustes aceptados, así que no hay nada que calcular.",
  unreachable: "No se llega al atlas. Inténtelo de nuevo con conexión.",
  failed: (status: number) =>
    `El atlas no dio sus datos (respuesta ${status}). Inténtelo de nuevo dentro de un rato.`,
  broken: "Lo que llegó no se puede leer: quizá se cortó por el camino. Inténtelo de nuevo.",
  retry: "Intentar de nuevo",
  tableLabel: "Tabla: cifras hechas aquí junto a las publicadas",
  group: "Clase y extremo",
  columns: { intercept: "Ordenada", slope: "Pendiente", spread: "Dispersión" },
  others: "Todas las demás",
  agrees: "igual",
  published: (figure: string) => `publicado ${figure}`,
  differ: "difieren",
  none: "ninguna",
};
