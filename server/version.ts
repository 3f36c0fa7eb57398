/** Version of the code, published with every fit. A test keeps it equal to the package's. */
export const CODE_VERSION = "0.1.0";
