import { hydrate } from "preact";
import { catalog } from "../../functions/index";
import { Example } from "./Example";
import { FunctionIndex } from "./FunctionIndex";
import "./help.css";

const example = document.getElementById("example");
const spec = catalog.find(({ id }) => id === example?.dataset.function);
if (example && spec) hydrate(<Example spec={spec} />, example);

const index = document.getElementById("index");
if (index) hydrate(<FunctionIndex catalog={catalog} />, index);
