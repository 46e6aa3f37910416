// The reference, rendered from the service's own document; nothing is asked of any other host.
"use strict";

window.addEventListener("load", () => {
  window.SwaggerUIBundle({
    url: "/openapi.json",
    dom_id: "#reference",
    deepLinking: true,
    docExpansion: "none",
    defaultModelsExpandDepth: -1,
    filter: true,
    validatorUrl: null,
    syntaxHighlight: false,
    tryItOutEnabled: true,
    requestSnippetsEnabled: false,
  });
});
