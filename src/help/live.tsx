import { hydrate } from "preact";
import { catalogue } from "../../functions/index";
import { Example } from "./Example";
import { FunctionIndex } from "./FunctionIndex";
import "./help.css";

const example = document.getElementById("example");
const spec = catalogue.find(({ id }) => id === example?.dataset.function);
if (example && spec) hydrate(<Example spec={spec} />, example);

const index = document.getElementById("index");
if (index) hydrate(<FunctionIndex catalogue={catalogue} />, index);
