import { Page } from "./Page";

/** For whoever puts Gablewright on the computers of a small office. */
export const OfficeGuide = ({ site }: { site: string }) => (
  <Page title="For the office" summary="How Gablewright comes into the Excel of one person, or of everybody.">
    <p>
      This folder holds all of it: it needs no server of its own, no account and no database. It was made for{" "}
      <a href={site}>{site}</a>; for another address make it again with{" "}
      <code>npm run package -- --site https://…</code>. It is tested against stand-ins and has not been tried
      in a real Excel yet: try it on one computer first.
    </p>
    <h2>Serve the folder</h2>
    <ol>
      <li>
        Copy the folder to any web host that serves files over https with a certificate that your computers
        trust.
      </li>
      <li>
        Open <a href="../index.html">the local workbook</a> there in a browser: when a worked example shows,
        the files are in place.
      </li>
      <li>
        Office.js comes with the folder. Microsoft supports only its own copy:{" "}
        <code>--office-js https://…</code> takes that one's address when the folder is made.
      </li>
      <li>Let the host compress what it sends, where it can: that makes it far less.</li>
    </ol>
    <p>
      Nothing that is typed leaves the computer. (Office.js, by which Excel talks to any add-in, tells
      Microsoft that it is used.) After the first visit the pages open without a network, too; Excel itself
      may want one to start an add-in.
    </p>
    <h2>One computer, to try it</h2>
    <ul>
      <li>
        Excel on the web: Home, Add-ins, More Add-ins, My Add-ins, Upload My Add-in, then choose{" "}
        <a href="../manifest.xml">manifest.xml</a>.
      </li>
      <li>
        Excel on a Mac: put <code>manifest.xml</code> into{" "}
        <code>~/Library/Containers/com.microsoft.Excel/Data/Documents/wef</code> (make the folder if it isn't
        there), start Excel again, and find it under Home, Add-ins.
      </li>
      <li>Excel on Windows: a shared folder, as below, may be a folder of that computer itself.</li>
    </ul>
    <h2>A shared folder, for a few computers with Windows</h2>
    <ol>
      <li>
        Put <code>manifest.xml</code> into a folder of your network that everybody may read, such as{" "}
        <code>\\server\add-ins</code>.
      </li>
      <li>
        In each Excel: File, Options, Trust Center, Trust Center Settings, Trusted Add-in Catalogs. Add the
        folder's address, tick Show in Menu, and start Excel again.
      </li>
      <li>Home, Add-ins, More Add-ins, Shared Folder: choose Gablewright.</li>
    </ol>
    <h2>Everybody, from one place</h2>
    <p>
      An administrator of Microsoft 365 uploads <code>manifest.xml</code> in the admin center (Settings,
      Integrated apps, Upload custom apps) and says who gets it. It shows in their Excel within a day, on
      Windows, Mac and the web.
    </p>
    <h2>A new version</h2>
    <ol>
      <li>
        Put the new folder in place of the old one, all of it. The version is at the pane's foot, and{" "}
        <code>=GABLE.VERSION()</code> tells it.
      </li>
      <li>
        Excel takes it when it starts again. The manifest is given out again only where its own text has
        changed: its version says so.
      </li>
      <li>
        What a function is called, takes and means stays within a major version. What was signed holds values
        only, and says the version that made it.
      </li>
    </ol>
    <h2>When something is wrong</h2>
    <ul>
      <li>
        Cells show <code>#NAME?</code>: the workbook was opened before the add-in. Open the pane, then Extend,
        Repair.
      </li>
      <li>
        The pane stays empty: open its address in a browser of that computer; a certificate warning there is
        the reason.
      </li>
      <li>
        A page says that a file was blocked: it isn't the file that the package was made with. Copy the folder
        again.
      </li>
    </ul>
  </Page>
);
