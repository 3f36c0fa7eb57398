import { assembleEdge } from "../server/edge.ts";

/** Builds page and geography once before the suite, and puts them together for the edge, so that no two tests do so at once. */
export default assembleEdge;
