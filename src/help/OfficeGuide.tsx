import { Page } from "./Page";

/** For the person who installs Gablewright on the computers of a small office. */
export const OfficeGuide = ({ site }: { site: string }) => (
  <Page title="For the office" summary="How to install Gablewright in Excel, for one person or for everyone.">
    <p>
      This folder is complete: it needs no server software, no account and no database. It was made for{" "}
      <a href={site}>{site}</a>. For another address, make it again with{" "}
      <code>npm run package -- --site https://…</code>. Gablewright is tested against a simulated Excel and
      has not been tried in a real one yet, so try it on one computer first.
    </p>
    <h2>Host the folder</h2>
    <ol>
      <li>
        Copy the folder to any web host that serves files over https with a certificate that your computers
        trust.
      </li>
      <li>
        Open <a href="../index.html">the local workbook</a> there in a browser. If a worked example shows, the
        files are in place.
      </li>
      <li>
        The folder includes Office.js. Microsoft supports only the copy on its own site; to use that one, make
        the folder with <code>--office-js https://…</code> and its address.
      </li>
      <li>If the host can compress files, turn that on: downloads get much smaller.</li>
    </ol>
    <p>
      Nothing you type leaves the computer. (Office.js, which connects any add-in to Excel, tells Microsoft
      that it is in use.) After the first visit the pages also open offline; Excel itself may need a network
      to start an add-in.
    </p>
    <h2>Try it on one computer</h2>
    <ul>
      <li>
        Excel on the web: click Home, Add-ins, More Add-ins, My Add-ins, Upload My Add-in, then choose{" "}
        <a href="../manifest.xml">manifest.xml</a>.
      </li>
      <li>
        Excel on a Mac: copy <code>manifest.xml</code> to{" "}
        <code>~/Library/Containers/com.microsoft.Excel/Data/Documents/wef</code> (create the folder if
        needed), restart Excel, and find Gablewright under Home, Add-ins.
      </li>
      <li>Excel on Windows: follow the next section. The shared folder may be on that same computer.</li>
    </ul>
    <h2>A few Windows computers: a shared folder</h2>
    <ol>
      <li>
        Copy <code>manifest.xml</code> to a network folder that everyone can read, such as{" "}
        <code>\\server\add-ins</code>.
      </li>
      <li>
        In each Excel, click File, Options, Trust Center, Trust Center Settings, Trusted Add-in Catalogs. Add
        the folder's address, check Show in Menu, and restart Excel.
      </li>
      <li>Click Home, Add-ins, More Add-ins, Shared Folder, and choose Gablewright.</li>
    </ol>
    <h2>Everyone at once: the admin center</h2>
    <p>
      A Microsoft 365 administrator uploads <code>manifest.xml</code> in the admin center (Settings,
      Integrated apps, Upload custom apps) and chooses who gets it. It appears in their Excel within a day, on
      Windows, Mac and the web.
    </p>
    <h2>Update to a new version</h2>
    <ol>
      <li>
        Replace the whole old folder with the new one. The version is at the bottom of the pane and in{" "}
        <code>=GABLE.VERSION()</code>.
      </li>
      <li>
        Excel uses the new version when it restarts. Distribute the manifest again only if the version number
        in it has changed.
      </li>
      <li>
        Within a major version, functions keep their names, parameters and meaning. Signed sheets hold values
        only, and show the version that made them.
      </li>
    </ol>
    <h2>Troubleshooting</h2>
    <ul>
      <li>
        Cells show <code>#NAME?</code>: the workbook was opened before the add-in. Open the pane, click
        Extend, then Repair workbook.
      </li>
      <li>
        The pane stays empty: open its address in a browser on that computer. If the browser shows a
        certificate warning, that is the cause.
      </li>
      <li>
        A page reports a blocked file: the file isn't the one that the package was made with. Copy the folder
        again.
      </li>
    </ul>
  </Page>
);
