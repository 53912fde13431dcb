<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en_GB">
<context>
    <name>AbsenceBlock</name>
    <message>
        <source>A session of these days is on record; it counts as ever.</source>
        <translation>Eine Einheit aus diesen Tagen ist aufgezeichnet; sie zählt wie immer.</translation>
    </message>
    <message>
        <source>Back since today</source>
        <translation>Seit heute zurück</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Days away</source>
        <translation>Abwesenheit</translation>
    </message>
    <message>
        <source>None on record. Note an illness or a journey, and the gap explains itself.</source>
        <translation>Keine. Krankheit oder Reise notieren, dann erklärt sich die Lücke.</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove: {absence}</source>
        <translation>Entfernen: {absence}</translation>
    </message>
    <message>
        <source>{count} sessions of these days are on record; they count as ever.</source>
        <translation>{count} Einheiten aus diesen Tagen sind aufgezeichnet; sie zählen wie immer.</translation>
    </message>
    <message>
        <source>{name}: {absence}</source>
        <translation>{name}: {absence}</translation>
    </message>
</context>
<context>
    <name>AbsenceForm</name>
    <message>
        <source>Change these days</source>
        <translation>Diese Tage ändern</translation>
    </message>
    <message>
        <source>First day away</source>
        <translation>Erster Tag der Abwesenheit</translation>
    </message>
    <message>
        <source>Last day away; empty: it goes on</source>
        <translation>Letzter Tag der Abwesenheit; leer: sie dauert an</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Needed: the first day, such as {example}.</source>
        <translation>Es fehlt der erste Tag, etwa {example}.</translation>
    </message>
    <message>
        <source>Note on the days away</source>
        <translation>Notiz zur Abwesenheit</translation>
    </message>
    <message>
        <source>Note these days</source>
        <translation>Diese Tage notieren</translation>
    </message>
    <message>
        <source>On record already: {absence}. Put that one right, or take other days.</source>
        <translation>Schon aufgezeichnet: {absence}; jene berichtigen oder andere Tage nehmen.</translation>
    </message>
    <message>
        <source>The last day is {first} at the earliest; leave it empty if it goes on.</source>
        <translation>Der letzte Tag ist frühestens {first}; leer lassen, wenn es andauert.</translation>
    </message>
    <message>
        <source>Why away</source>
        <translation>Warum abwesend</translation>
    </message>
    <message>
        <source>first day</source>
        <translation>erster Tag</translation>
    </message>
    <message>
        <source>last day (empty: goes on)</source>
        <translation>letzter Tag (leer: dauert an)</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>why</source>
        <translation>warum</translation>
    </message>
</context>
<context>
    <name>Absences</name>
    <message>
        <source>Days away, ill or injured count as days without training; only days of a deload do not. From {repeat} days without an exercise on, the last is asked again; from {lighter} on less, from {easier} on clearly less, from {restart} on a new start is needed. No session is expected on these days.</source>
        <translation>Tage abwesend, krank oder verletzt zählen als Tage ohne Training; nur Deload-Tage nicht. Ab {repeat} Tagen ohne eine Übung gilt das Letzte noch einmal, ab {lighter} weniger, ab {easier} deutlich weniger, ab {restart} ist ein neuer Start nötig. An diesen Tagen wird keine Einheit erwartet.</translation>
    </message>
    <message>
        <source>Next session: {day}.</source>
        <translation>Am {day} ist die nächste Einheit.</translation>
    </message>
    <message>
        <source>No gap changes what is asked.</source>
        <translation>Keine Lücke ändert die Vorgabe.</translation>
    </message>
    <message>
        <source>No session is planned ahead.</source>
        <translation>Keine Einheit ist geplant.</translation>
    </message>
    <message>
        <source>Nothing is expected until the return; back today, the next session is {day}.</source>
        <translation>Bis zur Rückkehr wird nichts erwartet; heute zurück, wäre am {day} die nächste Einheit.</translation>
    </message>
    <message>
        <source>{kind} from {first} on</source>
        <translation>{kind} ab {first}</translation>
    </message>
    <message>
        <source>{kind} since {first}</source>
        <translation>{kind} seit {first}</translation>
    </message>
</context>
<context>
    <name>Activities</name>
    <message>
        <source>Day of the activity</source>
        <translation>Tag der Aktivität</translation>
    </message>
    <message>
        <source>Effort of the activity, 0 to 10</source>
        <translation>Anstrengung der Aktivität, 0 bis 10</translation>
    </message>
    <message>
        <source>Minutes of the activity</source>
        <translation>Minuten der Aktivität</translation>
    </message>
    <message>
        <source>Name of the activity</source>
        <translation>Name der Aktivität</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
</context>
<context>
    <name>ActivityRows</name>
    <message>
        <source>Another activity</source>
        <translation>Weitere Aktivität</translation>
    </message>
    <message>
        <source>Remove {name}</source>
        <translation>{name} entfernen</translation>
    </message>
    <message>
        <source>activity</source>
        <translation>Aktivität</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>effort</source>
        <translation>Anstr.</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
</context>
<context>
    <name>Ahead</name>
    <message>
        <source>If all goes as asked</source>
        <translation>Alles wie vorgegeben</translation>
    </message>
    <message>
        <source>If one in four is missed</source>
        <translation>Jede vierte verfehlt</translation>
    </message>
</context>
<context>
    <name>Application</name>
    <message>
        <source>Backed up to {path}</source>
        <translation>Gesichert in {path}</translation>
    </message>
    <message>
        <source>Choose a file that holds everything</source>
        <translation>Eine Datei wählen, die alles enthält</translation>
    </message>
    <message>
        <source>Choose a trainee first.</source>
        <translation>Erst eine Person wählen.</translation>
    </message>
    <message>
        <source>Data files (*.db)</source>
        <translation>Datendateien (*.db)</translation>
    </message>
    <message>
        <source>Erased from the data file and {count} copies</source>
        <translation>Aus der Datendatei und {count} Kopien gelöscht</translation>
    </message>
    <message>
        <source>Erased from the data file and {count} copies; the name still stands in texts of others</source>
        <translation>Aus der Datendatei und {count} Kopien gelöscht; der Name steht noch in Texten anderer</translation>
    </message>
    <message>
        <source>Everything is taken over; what was there is in {name}</source>
        <translation>Alles ist übernommen; was da war, liegt in {name}</translation>
    </message>
    <message>
        <source>Left as they were, without it: {names}</source>
        <translation>Unverändert geblieben, ohne Passphrase: {names}</translation>
    </message>
    <message>
        <source>Open a data file</source>
        <translation>Datendatei öffnen</translation>
    </message>
    <message>
        <source>Reading everything in {name}…</source>
        <translation>Lese alles aus {name}…</translation>
    </message>
    <message>
        <source>Something went wrong that should not have.</source>
        <translation>Etwas ist schiefgegangen, das nicht schiefgehen sollte.</translation>
    </message>
    <message>
        <source>The data file and its backups have a passphrase</source>
        <translation>Die Datendatei und ihre Sicherungen haben eine Passphrase</translation>
    </message>
    <message>
        <source>The data file and its backups have no passphrase</source>
        <translation>Die Datendatei und ihre Sicherungen haben keine Passphrase</translation>
    </message>
    <message>
        <source>The data file is damaged: take the newest backup from {folder}.</source>
        <translation>Die Datendatei ist beschädigt: bitte die neueste Sicherung aus {folder} nehmen.</translation>
    </message>
    <message>
        <source>The data file {name} is damaged.</source>
        <translation>Die Datendatei {name} ist beschädigt.</translation>
    </message>
    <message>
        <source>These copies still hold everything: {names}</source>
        <translation>Diese Kopien enthalten noch alles: {names}</translation>
    </message>
    <message>
        <source>Went back to the backup; what was there is in {name}</source>
        <translation>Zurück zur Sicherung; was da war, liegt in {name}</translation>
    </message>
    <message>
        <source>What was saved is safe. The text below helps to mend it; it holds places in the program, and no names or health data.</source>
        <translation>Was gespeichert war, ist sicher. Der Text unten hilft bei der Reparatur; er enthält Stellen im Programm, keine Namen und keine Gesundheitsdaten.</translation>
    </message>
    <message>
        <source>{name} is locked by a passphrase.</source>
        <translation>{name} ist durch eine Passphrase gesperrt.</translation>
    </message>
</context>
<context>
    <name>AssignPanel</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>Give</source>
        <translation>Zuweisen</translation>
    </message>
    <message>
        <source>Give it to {name}</source>
        <translation>{name} zuweisen</translation>
    </message>
    <message>
        <source>Say when it starts.</source>
        <translation>Es fehlt, wann er beginnt.</translation>
    </message>
    <message>
        <source>The program has {count} days a week: choose as many weekdays.</source>
        <translation>Der Plan hat {count} Tage pro Woche: ebenso viele Wochentage wählen.</translation>
    </message>
</context>
<context>
    <name>Balance</name>
    <message>
        <source>Add {exercise} on {day}</source>
        <translation>{exercise} am {day} dazunehmen</translation>
    </message>
    <message>
        <source>Do {first} and {second} in turn: {saves} min less</source>
        <translation>{first} und {second} im Wechsel: {saves} min weniger</translation>
    </message>
    <message>
        <source>Leave the {variable} as they were</source>
        <translation>{variable} lassen, wie es war</translation>
    </message>
    <message>
        <source>Move {day} to {weekday}</source>
        <translation>{day} auf {weekday} verschieben</translation>
    </message>
    <message>
        <source>No {pattern} in the week</source>
        <translation>{pattern} fehlt in der Woche</translation>
    </message>
    <message>
        <source>Take {exercise} off: {saves} min less</source>
        <translation>{exercise} streichen: {saves} min weniger</translation>
    </message>
    <message>
        <source>days a week</source>
        <translation>Tage pro Woche</translation>
    </message>
    <message>
        <source>lower body</source>
        <translation>Unterkörper</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>Ziehen</translation>
    </message>
    <message>
        <source>push</source>
        <translation>Drücken</translation>
    </message>
    <message>
        <source>upper body</source>
        <translation>Oberkörper</translation>
    </message>
    <message>
        <source>{day} takes {minutes} min, {allowed} are there</source>
        <translation>{day} braucht {minutes} min, {allowed} sind da</translation>
    </message>
    <message>
        <source>{exercise}: {variables} grow at once in this phase</source>
        <translation>{exercise}: {variables} steigen in dieser Phase zugleich</translation>
    </message>
    <message>
        <source>{one} and {other} even, {count} sets each</source>
        <translation>{one} und {other} gleich, je {count} Sätze</translation>
    </message>
    <message>
        <source>{one} {first} against {other} {second}</source>
        <translation>{one} {first} gegen {other} {second}</translation>
    </message>
    <message>
        <source>{pattern} on {first} and {second}, no full day between</source>
        <translation>{pattern} am {first} und {second}, kein voller Tag dazwischen</translation>
    </message>
    <message>
        <source>{pattern} twice on {first}</source>
        <translation>{pattern} zweimal am {first}</translation>
    </message>
    <message>
        <source>{push} sets pushed against {pull} pulled</source>
        <translation>{push} Sätze Drücken gegen {pull} Ziehen</translation>
    </message>
</context>
<context>
    <name>BalanceBlock</name>
    <message>
        <source>Balance</source>
        <translation>Ausgleich</translation>
    </message>
    <message>
        <source>Hard sets a week, by muscle</source>
        <translation>Harte Sätze pro Woche, nach Muskel</translation>
    </message>
    <message>
        <source>Nothing is missing, nothing piles up.</source>
        <translation>Nichts fehlt, nichts häuft sich.</translation>
    </message>
    <message>
        <source>Nothing planned yet</source>
        <translation>Noch nichts geplant</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation>und {count} weitere</translation>
    </message>
    <message>
        <source>dotted: published marks at {marks}</source>
        <translation>gepunktet: veröffentlichte Marken bei {marks}</translation>
    </message>
</context>
<context>
    <name>BannerActs</name>
    <message>
        <source>Set a caution aside</source>
        <translation>Hinweis zurückstellen</translation>
    </message>
</context>
<context>
    <name>CautionBanner</name>
    <message>
        <source>Next ({place} of {count})</source>
        <translation>Nächster ({place} von {count})</translation>
    </message>
    <message>
        <source>Not now</source>
        <translation>Jetzt nicht</translation>
    </message>
    <message>
        <source>Show the next caution</source>
        <translation>Nächsten Hinweis zeigen</translation>
    </message>
    <message>
        <source>Source: {source}</source>
        <translation>Quelle: {source}</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
</context>
<context>
    <name>CautionPart</name>
    <message>
        <source>Cleared by {name}</source>
        <translation>Freigegeben von {name}</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation>Nichts ist offen.</translation>
    </message>
    <message>
        <source>Nothing speaks against asking more.</source>
        <translation>Nichts spricht dagegen, mehr vorzugeben.</translation>
    </message>
    <message>
        <source>Nothing was set aside. A caution that you set aside is kept here with your reason; it comes back when what it rests on changes.</source>
        <translation>Nichts wurde zurückgestellt. Ein zurückgestellter Hinweis bleibt hier mit seinem Grund; er kommt wieder, wenn sich ändert, worauf er beruht.</translation>
    </message>
    <message>
        <source>One caution is open.</source>
        <translation>Ein Hinweis ist offen.</translation>
    </message>
    <message>
        <source>Record the clearance of {name}</source>
        <translation>Freigabe von {name} festhalten</translation>
    </message>
    <message>
        <source>Set a caution aside</source>
        <translation>Hinweis zurückstellen</translation>
    </message>
    <message>
        <source>Set aside and cleared</source>
        <translation>Zurückgestellt und freigegeben</translation>
    </message>
    <message>
        <source>Something stops the training; it is cleared, never set aside.</source>
        <translation>Etwas hält das Training an; es wird freigegeben, nie zurückgestellt.</translation>
    </message>
    <message>
        <source>Take a caution up again</source>
        <translation>Hinweis wieder aufnehmen</translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation>Wieder aufnehmen</translation>
    </message>
    <message>
        <source>Take up again: {text}</source>
        <translation>Wieder aufnehmen: {text}</translation>
    </message>
    <message>
        <source>is open again</source>
        <translation>ist wieder offen</translation>
    </message>
    <message>
        <source>no longer so</source>
        <translation>gilt nicht mehr</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>kein Grund genannt</translation>
    </message>
    <message>
        <source>stays aside</source>
        <translation>bleibt zurückgestellt</translation>
    </message>
    <message>
        <source>{count} cautions are open.</source>
        <translation>{count} Hinweise sind offen.</translation>
    </message>
    <message>
        <source>{what} ({who})</source>
        <translation>{what} ({who})</translation>
    </message>
</context>
<context>
    <name>CautionRow</name>
    <message>
        <source>Not now</source>
        <translation>Jetzt nicht</translation>
    </message>
    <message>
        <source>Source: {source}</source>
        <translation>Quelle: {source}</translation>
    </message>
</context>
<context>
    <name>CautionWaysRow</name>
    <message>
        <source>Session of {day}</source>
        <translation>Einheit vom {day}</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>65 or older</source>
        <translation>65 oder älter</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Info</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>aches were noted</source>
        <translation>Beschwerden wurden notiert</translation>
    </message>
    <message>
        <source>clearance needed</source>
        <translation>Freigabe nötig</translation>
    </message>
    <message>
        <source>days much alike</source>
        <translation>Tage sehr ähnlich</translation>
    </message>
    <message>
        <source>deload advised</source>
        <translation>Deload ratsam</translation>
    </message>
    <message>
        <source>effort rises at the same work ({effort_before} to {effort_now})</source>
        <translation>die Anstrengung steigt bei gleicher Arbeit ({effort_before} auf {effort_now})</translation>
    </message>
    <message>
        <source>few sessions a week</source>
        <translation>wenige Einheiten pro Woche</translation>
    </message>
    <message>
        <source>large step</source>
        <translation>großer Schritt</translation>
    </message>
    <message>
        <source>much grew at once</source>
        <translation>viel auf einmal gesteigert</translation>
    </message>
    <message>
        <source>next step too large</source>
        <translation>nächster Schritt zu groß</translation>
    </message>
    <message>
        <source>no deload for long</source>
        <translation>lange kein Deload</translation>
    </message>
    <message>
        <source>no rest day between</source>
        <translation>kein Ruhetag dazwischen</translation>
    </message>
    <message>
        <source>not screened yet</source>
        <translation>Gesundheitsfragen offen</translation>
    </message>
    <message>
        <source>pain noted</source>
        <translation>Schmerz notiert</translation>
    </message>
    <message>
        <source>pain: decide</source>
        <translation>Schmerz: entscheiden</translation>
    </message>
    <message>
        <source>perhaps under 18</source>
        <translation>vielleicht unter 18</translation>
    </message>
    <message>
        <source>plateau likely</source>
        <translation>Plateau wahrscheinlich</translation>
    </message>
    <message>
        <source>red flag: clearance</source>
        <translation>Warnzeichen: Freigabe</translation>
    </message>
    <message>
        <source>reps in reserve fall at the same work ({rir_before} to {rir_now})</source>
        <translation>die Reserve sinkt bei gleicher Arbeit ({rir_before} auf {rir_now})</translation>
    </message>
    <message>
        <source>rule complete</source>
        <translation>Regel am Ende</translation>
    </message>
    <message>
        <source>training load incomplete</source>
        <translation>Trainingsbelastung unvollständig</translation>
    </message>
    <message>
        <source>wellness is down ({wellness_before} to {wellness_now})</source>
        <translation>das Befinden sinkt ({wellness_before} auf {wellness_now})</translation>
    </message>
    <message>
        <source>{days} since last</source>
        <translation>{days} seit dem letzten Mal</translation>
    </message>
    <message>
        <source>{lines} exercises stand still</source>
        <translation>{lines} Übungen stehen still</translation>
    </message>
</context>
<context>
    <name>CautionsSeen</name>
    <message>
        <source>All {count}</source>
        <translation>Alle {count}</translation>
    </message>
    <message>
        <source>Nothing was seen.</source>
        <translation>Nichts war zu sehen.</translation>
    </message>
    <message>
        <source>Reading the days trained…</source>
        <translation>Lese die Trainingstage…</translation>
    </message>
    <message>
        <source>Seen in the last {weeks}</source>
        <translation>Gesehen in den letzten {weeks}</translation>
    </message>
    <message>
        <source>since {day}</source>
        <translation>seit {day}</translation>
    </message>
</context>
<context>
    <name>Changes</name>
    <message>
        <source>No trend tells the maximum of {name}: the load is as typed.</source>
        <translation>Kein Trend nennt das Maximum von {name}: die Last bleibt, wie eingegeben.</translation>
    </message>
    <message>
        <source>from {day}: moves by {rule}</source>
        <translation>ab {day}: steigt nach {rule}</translation>
    </message>
    <message>
        <source>from {day}: starts at {work}</source>
        <translation>ab {day}: beginnt bei {work}</translation>
    </message>
    <message>
        <source>from {day}: starts at {work}, by assessment</source>
        <translation>ab {day}: beginnt bei {work}, nach Test</translation>
    </message>
    <message>
        <source>from {day}: starts at {work}, from the record</source>
        <translation>ab {day}: beginnt bei {work}, nach den Aufzeichnungen</translation>
    </message>
    <message>
        <source>from {day}: {work}</source>
        <translation>ab {day}: {work}</translation>
    </message>
    <message>
        <source>{name} would start at {load} today: {percent} % of about {maximum} (± {off}).</source>
        <translation>{name} würde heute bei {load} beginnen: {percent} % von etwa {maximum} (± {off}).</translation>
    </message>
</context>
<context>
    <name>ChangesList</name>
    <message>
        <source>Change the rule for {name} only</source>
        <translation>Regel nur für {name} ändern</translation>
    </message>
    <message>
        <source>Take back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>{name}, {change}</source>
        <translation>{name}, {change}</translation>
    </message>
</context>
<context>
    <name>ChartBlock</name>
    <message>
        <source>Hard sets a week</source>
        <translation>Harte Sätze pro Woche</translation>
    </message>
    <message>
        <source>Left and Right go from session to session, + and − show less and more.</source>
        <translation>Links und Rechts gehen von Einheit zu Einheit, + und − zeigen weniger und mehr.</translation>
    </message>
    <message>
        <source>Open session</source>
        <translation>Einheit öffnen</translation>
    </message>
    <message>
        <source>done over planned</source>
        <translation>gemacht über geplant</translation>
    </message>
</context>
<context>
    <name>ChartSaving</name>
    <message>
        <source>Not saved: {why}</source>
        <translation>Nicht gespeichert: {why}</translation>
    </message>
    <message>
        <source>Save as drawing (SVG)…</source>
        <translation>Als Zeichnung speichern (SVG)…</translation>
    </message>
    <message>
        <source>Save as picture (PNG)…</source>
        <translation>Als Bild speichern (PNG)…</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>Diagramm speichern</translation>
    </message>
    <message>
        <source>Save the numbers (CSV)…</source>
        <translation>Zahlen speichern (CSV)…</translation>
    </message>
    <message>
        <source>Save the numbers (spreadsheet)…</source>
        <translation>Zahlen speichern (Arbeitsmappe)…</translation>
    </message>
    <message>
        <source>Saved to {path}</source>
        <translation>Gespeichert in {path}</translation>
    </message>
</context>
<context>
    <name>Chooser</name>
    <message>
        <source>Leave</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Nothing is called like that: try other letters</source>
        <translation>Nichts heißt so: andere Buchstaben versuchen</translation>
    </message>
    <message>
        <source>Return takes it, Esc leaves</source>
        <translation>Return übernimmt, Esc bricht ab</translation>
    </message>
</context>
<context>
    <name>ClearanceForm</name>
    <message>
        <source>Day of the clearance</source>
        <translation>Tag der Freigabe</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Licensed professional who cleared the trainee</source>
        <translation>Zugelassene Fachperson, die freigegeben hat</translation>
    </message>
    <message>
        <source>Needed: the day, today or before.</source>
        <translation>Es fehlt der Tag, heute oder früher.</translation>
    </message>
    <message>
        <source>Needed: the name of the licensed professional.</source>
        <translation>Es fehlt der Name der zugelassenen Fachperson.</translation>
    </message>
    <message>
        <source>Record only what a licensed professional said; local rules come first.</source>
        <translation>Nur festhalten, was eine zugelassene Fachperson gesagt hat; örtliche Regeln gehen vor.</translation>
    </message>
    <message>
        <source>Record the clearance</source>
        <translation>Freigabe festhalten</translation>
    </message>
    <message>
        <source>What was said</source>
        <translation>Was gesagt wurde</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>licensed professional</source>
        <translation>zugelassene Fachperson</translation>
    </message>
    <message>
        <source>what was said</source>
        <translation>was gesagt wurde</translation>
    </message>
</context>
<context>
    <name>Clipboard</name>
    <message>
        <source>1 slot</source>
        <translation>1 Platz</translation>
    </message>
    <message>
        <source>a day</source>
        <translation>ein Tag</translation>
    </message>
    <message>
        <source>a phase</source>
        <translation>eine Phase</translation>
    </message>
    <message>
        <source>{count} slots</source>
        <translation>{count} Plätze</translation>
    </message>
</context>
<context>
    <name>ColumnHeader</name>
    <message>
        <source>What {column} holds</source>
        <translation>Was {column} enthält</translation>
    </message>
</context>
<context>
    <name>Comparing</name>
    <message>
        <source>Compare {name} with</source>
        <translation>{name} vergleichen mit</translation>
    </message>
    <message>
        <source>Compare…</source>
        <translation>Vergleich…</translation>
    </message>
    <message>
        <source>Nothing any more</source>
        <translation>Mit nichts mehr</translation>
    </message>
    <message>
        <source>a line, a trainee, an earlier time</source>
        <translation>eine Linie, eine Person, eine frühere Zeit</translation>
    </message>
</context>
<context>
    <name>Dates</name>
    <message>
        <source>Not a date: write it like {example} or {iso}.</source>
        <translation>Kein Datum: bitte wie {example} oder {iso} schreiben.</translation>
    </message>
</context>
<context>
    <name>DayBlock</name>
    <message>
        <source>Add an exercise to this day</source>
        <translation>Diesem Tag eine Übung hinzufügen</translation>
    </message>
    <message>
        <source>Add an exercise: part of its name, and 3 × 8-12 60 if you like</source>
        <translation>Übung hinzufügen: Teil des Namens, auf Wunsch mit 3 × 8-12 60</translation>
    </message>
    <message>
        <source>Type part of an exercise&apos;s name, like squ 3 × 8-12 60: Return adds it</source>
        <translation>Teil eines Übungsnamens, etwa knie 3 × 8-12 60: Return fügt hinzu</translation>
    </message>
</context>
<context>
    <name>DayHead</name>
    <message>
        <source>1 slot</source>
        <translation>1 Platz</translation>
    </message>
    <message>
        <source>Return edits the day, Alt with the arrows moves it, Delete removes it.</source>
        <translation>Return bearbeitet den Tag, Alt mit den Pfeilen verschiebt ihn, Entf entfernt ihn.</translation>
    </message>
    <message>
        <source>eight</source>
        <translation>acht</translation>
    </message>
    <message>
        <source>four</source>
        <translation>vier</translation>
    </message>
    <message>
        <source>nothing planned yet</source>
        <translation>noch nichts geplant</translation>
    </message>
    <message>
        <source>six</source>
        <translation>sechs</translation>
    </message>
    <message>
        <source>the next {count} sessions, if all goes as asked</source>
        <translation>nächste {count} Einheiten, wenn alles wie vorgegeben läuft</translation>
    </message>
    <message>
        <source>the next {count}, if all goes well</source>
        <translation>die nächsten {count}, wenn alles gut läuft</translation>
    </message>
    <message>
        <source>three</source>
        <translation>drei</translation>
    </message>
    <message>
        <source>two</source>
        <translation>zwei</translation>
    </message>
    <message>
        <source>{count} slots</source>
        <translation>{count} Plätze</translation>
    </message>
    <message>
        <source>{detail} · in turn</source>
        <translation>{detail} · im Wechsel</translation>
    </message>
    <message>
        <source>{slots} · about {time}</source>
        <translation>{slots} · etwa {time}</translation>
    </message>
</context>
<context>
    <name>DayLoads</name>
    <message>
        <source>Load by day. {days}</source>
        <translation>Belastung nach Tagen. {days}</translation>
    </message>
    <message>
        <source>away</source>
        <translation>abwesend</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>Deload</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
</context>
<context>
    <name>DayPanel</name>
    <message>
        <source>Holds</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>Rename the day</source>
        <translation>Tag umbenennen</translation>
    </message>
    <message>
        <source>Weekday</source>
        <translation>Wochentag</translation>
    </message>
    <message>
        <source>What the day holds</source>
        <translation>Was der Tag enthält</translation>
    </message>
    <message>
        <source>in turn, any training day</source>
        <translation>im Wechsel, an jedem Trainingstag</translation>
    </message>
</context>
<context>
    <name>Deload</name>
    <message>
        <source>1 exercise</source>
        <translation>1 Übung</translation>
    </message>
    <message>
        <source>A deload is due.</source>
        <translation>Ein Deload ist fällig.</translation>
    </message>
    <message>
        <source>A deload is planned from {day} on.</source>
        <translation>Ein Deload ist ab {day} geplant.</translation>
    </message>
    <message>
        <source>A deload runs until {day}.</source>
        <translation>Bis {day} läuft ein Deload.</translation>
    </message>
    <message>
        <source>Every 5.6 ± 2.3 weeks for 6.4 ± 1.7 days, less volume and load, more in reserve, the same exercises and days: survey of 246 competitive athletes, Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y. Less intensity, volume and closeness to failure: Bell 2023, Sports Med Open 9:87, DOI 10.1186/s40798-023-00633-0. Every 4-8 weeks: Bell 2025, Strength Cond J. By how much to cut is published nowhere: the factors are yours. The thresholds of the signs, and two at once, are common practice.</source>
        <translation>Alle 5,6 ± 2,3 Wochen für 6,4 ± 1,7 Tage, weniger Umfang und Last, mehr Reserve, gleiche Übungen und Tage: Umfrage unter 246 Wettkampfsportlern, Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y. Weniger Intensität, Umfang und Nähe zum Versagen: Bell 2023, Sports Med Open 9:87, DOI 10.1186/s40798-023-00633-0. Alle 4-8 Wochen: Bell 2025, Strength Cond J. Um wie viel zu kürzen ist, ist nirgends veröffentlicht: die Faktoren sind frei gewählt. Die Schwellen der Zeichen, und zwei zugleich, sind gängige Praxis.</translation>
    </message>
    <message>
        <source>More is known by {day}.</source>
        <translation>Mehr ist bis {day} bekannt.</translation>
    </message>
    <message>
        <source>No clear difference of performance: {likely} (80 %: {low} to {high})</source>
        <translation>Kein klarer Unterschied der Leistung: {likely} (80 %: {low} bis {high})</translation>
    </message>
    <message>
        <source>No session is recorded yet.</source>
        <translation>Noch keine Einheit aufgezeichnet.</translation>
    </message>
    <message>
        <source>No week</source>
        <translation>Noch keine Woche</translation>
    </message>
    <message>
        <source>Nothing asks for a deload now.</source>
        <translation>Nichts verlangt jetzt einen Deload.</translation>
    </message>
    <message>
        <source>Nothing is proposed until a licensed professional&apos;s clearance is recorded.</source>
        <translation>Nichts wird vorgeschlagen, bis die Freigabe einer zugelassenen Fachperson festgehalten ist.</translation>
    </message>
    <message>
        <source>Performance after against before: {likely} (80 %: {low} to {high})</source>
        <translation>Leistung danach gegen davor: {likely} (80 %: {low} bis {high})</translation>
    </message>
    <message>
        <source>Positions resume where they stood. After these {weeks} every exercise stands where it would stand without it.</source>
        <translation>Alles geht weiter, wo es stand. {weeks} danach steht jede Übung, wo sie ohne ihn stünde.</translation>
    </message>
    <message>
        <source>Positions resume where they stood. If all goes as asked, after these {weeks} {count} of {all} exercises stand elsewhere than without it:</source>
        <translation>Alles geht weiter, wo es stand. Wenn alles wie vorgegeben läuft, stehen {weeks} danach {count} von {all} Übungen anders als ohne ihn:</translation>
    </message>
    <message>
        <source>Several signs at once speak for a deload soon.</source>
        <translation>Mehrere Zeichen zugleich sprechen für einen baldigen Deload.</translation>
    </message>
    <message>
        <source>Signs seen ({count}; {needed} make a deload due): {told}.</source>
        <translation>Zeichen ({count}; ab {needed} ist ein Deload fällig): {told}.</translation>
    </message>
    <message>
        <source>Signs seen: none of plateaus, wellness down, effort up at the same work, aches.</source>
        <translation>Zeichen: keine von Plateaus, schlechterem Befinden, mehr Anstrengung bei gleicher Arbeit, Beschwerden.</translation>
    </message>
    <message>
        <source>The next deload is due from {day} on.</source>
        <translation>Der nächste Deload ist ab {day} fällig.</translation>
    </message>
    <message>
        <source>The program has a deload from {day} on.</source>
        <translation>Der Plan hat ab {day} einen Deload.</translation>
    </message>
    <message>
        <source>Too few sessions to say: {before} before and {after} after it are needed of an exercise.</source>
        <translation>Zu wenige Einheiten für eine Aussage: je Übung braucht es {before} davor und {after} danach.</translation>
    </message>
    <message>
        <source>aches noted on {ache_days} of the last 14 days</source>
        <translation>Beschwerden notiert an {ache_days} der letzten 14 Tage</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation>und {count} weitere</translation>
    </message>
    <message>
        <source>effort rose from {effort_before} to {effort_now} at no more work</source>
        <translation>die Anstrengung stieg von {effort_before} auf {effort_now} ohne mehr Arbeit</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>reps in reserve fell from {rir_before} to {rir_now} at the same work</source>
        <translation>die Reserve sank von {rir_before} auf {rir_now} bei gleicher Arbeit</translation>
    </message>
    <message>
        <source>sets {times} {factor}, load {minus} {percent} %</source>
        <translation>Sätze {times} {factor}, Last {minus} {percent} %</translation>
    </message>
    <message>
        <source>wellness fell from {wellness_before} to {wellness_now} (of 5)</source>
        <translation>das Befinden sank von {wellness_before} auf {wellness_now} (von 5)</translation>
    </message>
    <message>
        <source>{built}; one is proposed every {every}.</source>
        <translation>{built}; alle {every} wird einer vorgeschlagen.</translation>
    </message>
    <message>
        <source>{built}; the program asks for none.</source>
        <translation>{built}; der Plan verlangt keinen.</translation>
    </message>
    <message>
        <source>{change} over {lines}; the trend before promised {promised}.</source>
        <translation>{change} über {lines}; der Trend davor versprach {promised}.</translation>
    </message>
    <message>
        <source>{count} exercises</source>
        <translation>{count} Übungen</translation>
    </message>
    <message>
        <source>{exercise}: {planned} instead of {usual}</source>
        <translation>{exercise}: {planned} statt {usual}</translation>
    </message>
    <message>
        <source>{lines} exercises have probably stopped growing</source>
        <translation>{lines} Übungen steigen wahrscheinlich nicht mehr</translation>
    </message>
    <message>
        <source>{weeks} of building since {day}</source>
        <translation>{weeks} Aufbau seit {day}</translation>
    </message>
</context>
<context>
    <name>DeloadDays</name>
    <message>
        <source>No training is planned in these days, so there is nothing to ease.</source>
        <translation>In diesen Tagen ist kein Training geplant, also gibt es nichts zu entlasten.</translation>
    </message>
    <message>
        <source>What it asks</source>
        <translation>Was er vorgibt</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>wie üblich</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>Deload</translation>
    </message>
    <message>
        <source>{usual} {arrow} {eased}</source>
        <translation>{usual} {arrow} {eased}</translation>
    </message>
</context>
<context>
    <name>DeloadList</name>
    <message>
        <source>Before and after are no proof: nobody knows what would have come without it. Strength is the trend of the estimated maximum, up to eight weeks before and four weeks after.</source>
        <translation>Davor und danach beweisen nichts: niemand weiß, was ohne ihn gekommen wäre. Kraft ist der Trend des geschätzten Maximums, bis zu acht Wochen davor und vier Wochen danach.</translation>
    </message>
    <message>
        <source>By exercise</source>
        <translation>Nach Übung</translation>
    </message>
    <message>
        <source>Deloads</source>
        <translation>Deloads</translation>
    </message>
    <message>
        <source>None yet. Once one is over, here it is told whether it helped.</source>
        <translation>Noch keiner. Ist einer vorbei, steht hier, ob er geholfen hat.</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove the deload {days}</source>
        <translation>Deload {days} entfernen</translation>
    </message>
    <message>
        <source>by the program</source>
        <translation>nach Plan</translation>
    </message>
    <message>
        <source>by the signs</source>
        <translation>nach den Zeichen</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>{before} before, {after} after</source>
        <translation>{before} davor, {after} danach</translation>
    </message>
</context>
<context>
    <name>DeloadPart</name>
    <message>
        <source>A week earlier</source>
        <translation>Eine Woche früher</translation>
    </message>
    <message>
        <source>A week later</source>
        <translation>Eine Woche später</translation>
    </message>
    <message>
        <source>Deload of {name}</source>
        <translation>Deload von {name}</translation>
    </message>
    <message>
        <source>Deload {days} for {name}</source>
        <translation>Deload {days} für {name}</translation>
    </message>
    <message>
        <source>Ease it so</source>
        <translation>So entlasten</translation>
    </message>
    <message>
        <source>How deloads ease</source>
        <translation>Wie Deloads entlasten</translation>
    </message>
    <message>
        <source>In the program</source>
        <translation>Im Plan</translation>
    </message>
    <message>
        <source>It cannot begin before this week.</source>
        <translation>Er kann nicht vor dieser Woche beginnen.</translation>
    </message>
    <message>
        <source>Load lower by percent</source>
        <translation>Last niedriger um Prozent</translation>
    </message>
    <message>
        <source>Move it here</source>
        <translation>Hierher verschieben</translation>
    </message>
    <message>
        <source>Numbers…</source>
        <translation>Zahlen…</translation>
    </message>
    <message>
        <source>Plan a deload for {name}</source>
        <translation>Deload für {name} planen</translation>
    </message>
    <message>
        <source>Plan this week</source>
        <translation>Diese Woche planen</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Remove the deload from {day}</source>
        <translation>Deload ab {day} entfernen</translation>
    </message>
    <message>
        <source>Sets a week, eased over usual; hatched: deload</source>
        <translation>Sätze pro Woche, entlastet über üblich; schraffiert: Deload</translation>
    </message>
    <message>
        <source>Sets times</source>
        <translation>Sätze mal</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>The weeks after it</source>
        <translation>Die Wochen danach</translation>
    </message>
    <message>
        <source>There is a deload already: {days}.</source>
        <translation>Den Deload {days} gibt es schon.</translation>
    </message>
    <message>
        <source>These are your settings: they hold for everybody from now on; the weeks between, where no program says how many.</source>
        <translation>Diese Werte gelten ab jetzt für alle; die Wochen dazwischen gelten, wo kein Plan etwas anderes sagt.</translation>
    </message>
    <message>
        <source>Weeks between, without a program</source>
        <translation>Wochen dazwischen, ohne Plan</translation>
    </message>
    <message>
        <source>Weeks to come</source>
        <translation>Kommende Wochen</translation>
    </message>
    <message>
        <source>load lower by %</source>
        <translation>Last niedriger um %</translation>
    </message>
    <message>
        <source>sets ×</source>
        <translation>Sätze ×</translation>
    </message>
    <message>
        <source>weeks between</source>
        <translation>Wochen dazwischen</translation>
    </message>
</context>
<context>
    <name>DeloadWeeks</name>
    <message>
        <source>Deload from {day}. Sets a week: {weeks}</source>
        <translation>Deload ab {day}. Sätze pro Woche: {weeks}</translation>
    </message>
    <message>
        <source>Left and right move it by a week, Return plans it.</source>
        <translation>Links und Rechts verschieben ihn um eine Woche, Return plant ihn.</translation>
    </message>
    <message>
        <source>{day}: {sets}</source>
        <translation>{day}: {sets}</translation>
    </message>
</context>
<context>
    <name>Desk</name>
    <message>
        <source>Course</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Days since the last session.</source>
        <translation>Tage seit der letzten Einheit.</translation>
    </message>
    <message>
        <source>Days trained of those planned, in the last four weeks.</source>
        <translation>Trainierte von geplanten Tagen, in den letzten vier Wochen.</translation>
    </message>
    <message>
        <source>Deload</source>
        <translation>Deload</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Getan</translation>
    </message>
    <message>
        <source>Estimated maximum of the main line, week by week; hard sets a week where there is none.</source>
        <translation>Geschätztes Maximum der Hauptlinie, Woche für Woche; harte Sätze pro Woche, wo es keines gibt.</translation>
    </message>
    <message>
        <source>Farthest goal first</source>
        <translation>Fernstes Ziel zuerst</translation>
    </message>
    <message>
        <source>Fewest plateaus first</source>
        <translation>Wenigste Plateaus zuerst</translation>
    </message>
    <message>
        <source>Goal</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Last</source>
        <translation>Zuletzt</translation>
    </message>
    <message>
        <source>Least gained first</source>
        <translation>Geringster Zuwachs zuerst</translation>
    </message>
    <message>
        <source>Least of the plan done first</source>
        <translation>Am wenigsten vom Plan getan zuerst</translation>
    </message>
    <message>
        <source>Lines that have probably stopped gaining.</source>
        <translation>Linien, die wahrscheinlich nicht mehr zulegen.</translation>
    </message>
    <message>
        <source>Longest ago first</source>
        <translation>Am längsten her zuerst</translation>
    </message>
    <message>
        <source>Most gained first</source>
        <translation>Größter Zuwachs zuerst</translation>
    </message>
    <message>
        <source>Most of the plan done first</source>
        <translation>Am meisten vom Plan getan zuerst</translation>
    </message>
    <message>
        <source>Most plateaus first</source>
        <translation>Meiste Plateaus zuerst</translation>
    </message>
    <message>
        <source>Nearest goal first</source>
        <translation>Nächstes Ziel zuerst</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Nächste</translation>
    </message>
    <message>
        <source>Next deload first</source>
        <translation>Nächster Deload zuerst</translation>
    </message>
    <message>
        <source>Next deload last</source>
        <translation>Nächster Deload zuletzt</translation>
    </message>
    <message>
        <source>Next to train first</source>
        <translation>Wer als Nächstes trainiert, zuerst</translation>
    </message>
    <message>
        <source>Next to train last</source>
        <translation>Wer als Nächstes trainiert, zuletzt</translation>
    </message>
    <message>
        <source>Plateau</source>
        <translation>Plateau</translation>
    </message>
    <message>
        <source>Sorted by name</source>
        <translation>Nach Namen</translation>
    </message>
    <message>
        <source>Sorted by name, backwards</source>
        <translation>Nach Namen, rückwärts</translation>
    </message>
    <message>
        <source>Sorted by need</source>
        <translation>Nach Dringlichkeit</translation>
    </message>
    <message>
        <source>Sorted by need: stops, who trains today, cautions.</source>
        <translation>Nach Dringlichkeit: Stopps, wer heute trainiert, Hinweise.</translation>
    </message>
    <message>
        <source>The most serious caution, or what goes on.</source>
        <translation>Der ernsteste Hinweis, oder was gerade läuft.</translation>
    </message>
    <message>
        <source>The next deload: planned, due by the program&apos;s rhythm, or advised by what is seen.</source>
        <translation>Der nächste Deload: geplant, nach dem Rhythmus des Plans fällig oder nach den Zeichen ratsam.</translation>
    </message>
    <message>
        <source>The next training day of the program.</source>
        <translation>Der nächste Trainingstag des Plans.</translation>
    </message>
    <message>
        <source>Trained last first</source>
        <translation>Zuletzt trainiert zuerst</translation>
    </message>
    <message>
        <source>Trainee</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation>Worauf zu achten ist</translation>
    </message>
    <message>
        <source>When the trend reaches the goal, with 80 % certainty.</source>
        <translation>Wann der Trend das Ziel erreicht, mit 80 % Sicherheit.</translation>
    </message>
    <message>
        <source>about now</source>
        <translation>etwa jetzt</translation>
    </message>
    <message>
        <source>about {day}</source>
        <translation>etwa {day}</translation>
    </message>
    <message>
        <source>advised</source>
        <translation>ratsam</translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation>und {count} weitere</translation>
    </message>
    <message>
        <source>by {day}</source>
        <translation>bis {day}</translation>
    </message>
    <message>
        <source>due</source>
        <translation>fällig</translation>
    </message>
    <message>
        <source>from {day}</source>
        <translation>ab {day}</translation>
    </message>
    <message>
        <source>never</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>not in a year</source>
        <translation>nicht in einem Jahr</translation>
    </message>
    <message>
        <source>reached</source>
        <translation>erreicht</translation>
    </message>
    <message>
        <source>to {day}</source>
        <translation>bis {day}</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>{done} of {planned}</source>
        <translation>{done}/{planned}</translation>
    </message>
    <message>
        <source>{first} to {last} sets a week</source>
        <translation>{first} bis {last} Sätze pro Woche</translation>
    </message>
    <message>
        <source>{line} +{count}</source>
        <translation>{line} +{count}</translation>
    </message>
    <message>
        <source>{line} {first} to {last}</source>
        <translation>{line} {first} bis {last}</translation>
    </message>
</context>
<context>
    <name>DeskOverview</name>
    <message>
        <source>1 needs attention</source>
        <translation>1 ist zu beachten</translation>
    </message>
    <message>
        <source>1 trains today</source>
        <translation>1 trainiert heute</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>All, who trains today, who needs attention</source>
        <translation>Alle, wer heute trainiert, wer Beachtung braucht</translation>
    </message>
    <message>
        <source>Filter</source>
        <translation>Filter</translation>
    </message>
    <message>
        <source>Filter by any word</source>
        <translation>Nach einem Wort filtern</translation>
    </message>
    <message>
        <source>Needs attention</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>Nobody is like that.</source>
        <translation>Niemand ist so.</translation>
    </message>
    <message>
        <source>Nobody is on the roster yet</source>
        <translation>Noch niemand auf der Liste</translation>
    </message>
    <message>
        <source>Open the screen that the cell speaks of</source>
        <translation>Den Bereich öffnen, von dem die Zelle spricht</translation>
    </message>
    <message>
        <source>Print the sheet of the row</source>
        <translation>Das Blatt der Zeile drucken</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Return</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Blatt</translation>
    </message>
    <message>
        <source>Sheet of {name}</source>
        <translation>Blatt von {name}</translation>
    </message>
    <message>
        <source>Shift+Return</source>
        <translation>Umschalt+Return</translation>
    </message>
    <message>
        <source>Show only rows with these words</source>
        <translation>Nur Zeilen mit diesen Wörtern zeigen</translation>
    </message>
    <message>
        <source>Sort by the column stood on, or the other way round</source>
        <translation>Nach der Spalte der Zelle sortieren, oder andersherum</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Who is shown</source>
        <translation>Wer gezeigt wird</translation>
    </message>
    <message>
        <source>nobody trains today</source>
        <translation>heute trainiert niemand</translation>
    </message>
    <message>
        <source>reading records, {known} of {everybody}</source>
        <translation>lese Aufzeichnungen, {known} von {everybody}</translation>
    </message>
    <message>
        <source>{count} need attention</source>
        <translation>{count} sind zu beachten</translation>
    </message>
    <message>
        <source>{count} train today</source>
        <translation>{count} trainieren heute</translation>
    </message>
    <message>
        <source>{screen} of {name}</source>
        <translation>{screen} von {name}</translation>
    </message>
</context>
<context>
    <name>DeskTable</name>
    <message>
        <source>Everybody. {order}</source>
        <translation>Alle. {order}</translation>
    </message>
</context>
<context>
    <name>DraftPanel</name>
    <message>
        <source>A balanced week from these wishes, each choice explained.</source>
        <translation>Eine ausgeglichene Woche nach diesen Wünschen, jede Wahl begründet.</translation>
    </message>
    <message>
        <source>An ordinary program to edit; nothing is saved until you take it.</source>
        <translation>Ein gewöhnlicher Plan zum Bearbeiten; gespeichert wird er erst mit dem Übernehmen.</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Draft a program</source>
        <translation>Plan entwerfen</translation>
    </message>
    <message>
        <source>Draft it</source>
        <translation>Entwerfen</translation>
    </message>
    <message>
        <source>Drafting</source>
        <translation>Entwurf läuft</translation>
    </message>
    <message>
        <source>It does not fit. Trying more days…</source>
        <translation>Es passt nicht. Versuche mehr Tage…</translation>
    </message>
    <message>
        <source>It does not fit. Trying more equipment…</source>
        <translation>Es passt nicht. Versuche mehr Ausstattung…</translation>
    </message>
    <message>
        <source>It does not fit. Trying more minutes…</source>
        <translation>Es passt nicht. Versuche mehr Minuten…</translation>
    </message>
    <message>
        <source>It does not fit. Trying to avoid less…</source>
        <translation>Es passt nicht. Versuche, weniger zu meiden…</translation>
    </message>
    <message>
        <source>Looking for the week that balances best…</source>
        <translation>Sucht die Woche mit dem besten Ausgleich…</translation>
    </message>
    <message>
        <source>On record for {name}, to avoid: {avoid}. Say it above too.</source>
        <translation>Für {name} aufgezeichnet, zu meiden: {avoid}. Bitte auch oben angeben.</translation>
    </message>
    <message>
        <source>Take it</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>for {name}</source>
        <translation>für {name}</translation>
    </message>
</context>
<context>
    <name>DraftResult</name>
    <message>
        <source>No single wish helps if it alone is relaxed: change two of them, such as more minutes and less to avoid.</source>
        <translation>Kein Wunsch allein hilft, wenn er gelockert wird: zwei ändern, etwa mehr Minuten und weniger zu meiden.</translation>
    </message>
    <message>
        <source>Relax one of them; each of these was tried, and leads to a program.</source>
        <translation>Einen davon lockern; jeder wurde versucht und führt zu einem Plan.</translation>
    </message>
    <message>
        <source>Relax this wish and draft again</source>
        <translation>Diesen Wunsch lockern und neu entwerfen</translation>
    </message>
    <message>
        <source>Sets a week</source>
        <translation>Sätze pro Woche</translation>
    </message>
    <message>
        <source>These wishes cannot be met together</source>
        <translation>Diese Wünsche sind zusammen nicht erfüllbar</translation>
    </message>
    <message>
        <source>Why this week</source>
        <translation>Warum diese Woche</translation>
    </message>
</context>
<context>
    <name>DraftWishesBlock</name>
    <message>
        <source>Avoid</source>
        <translation>Meiden</translation>
    </message>
    <message>
        <source>Days a week</source>
        <translation>Tage pro Woche</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Ausstattung</translation>
    </message>
    <message>
        <source>Goal</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>Minutes a session</source>
        <translation>Minuten je Einheit</translation>
    </message>
    <message>
        <source>Patterns, exercises, muscles, or words in their names, with commas between</source>
        <translation>Muster, Übungen, Muskeln oder Wörter aus ihren Namen, durch Kommas getrennt</translation>
    </message>
    <message>
        <source>lunge, deadlift, chest</source>
        <translation>Ausfallschritt, Kreuzheben, Brust</translation>
    </message>
    <message>
        <source>what {name} owns</source>
        <translation>was {name} besitzt</translation>
    </message>
</context>
<context>
    <name>Drafts</name>
    <message>
        <source>Allow again: {to}</source>
        <translation>Wieder erlauben: {to}</translation>
    </message>
    <message>
        <source>Every {every}th week is a deload</source>
        <translation>Jede {every}. Woche ist ein Deload</translation>
    </message>
    <message>
        <source>Give it {to} a session</source>
        <translation>{to} je Einheit geben</translation>
    </message>
    <message>
        <source>Have more equipment: {to}</source>
        <translation>Mehr Ausstattung haben: {to}</translation>
    </message>
    <message>
        <source>Loads start light: set each trainee&apos;s own, or test first</source>
        <translation>Lasten beginnen leicht: für jede Person eigene setzen oder erst testen</translation>
    </message>
    <message>
        <source>No deload planned: your call for novices</source>
        <translation>Kein Deload geplant: bei Einsteigern nach Ermessen</translation>
    </message>
    <message>
        <source>One day a week; {advised} are advised for adults</source>
        <translation>Ein Tag pro Woche; Erwachsenen werden {advised} empfohlen</translation>
    </message>
    <message>
        <source>Train on {to} days a week</source>
        <translation>An {to} Tagen pro Woche trainieren</translation>
    </message>
    <message>
        <source>Trained on {weekdays}, as far apart as they can be</source>
        <translation>Trainiert am {weekdays}, so weit auseinander wie möglich</translation>
    </message>
    <message>
        <source>Variations start easy: a test says where to begin</source>
        <translation>Varianten beginnen leicht: ein Test zeigt, wo</translation>
    </message>
    <message>
        <source>advanced</source>
        <translation>Erfahren</translation>
    </message>
    <message>
        <source>as above</source>
        <translation>wie oben</translation>
    </message>
    <message>
        <source>barbell, bench, a bar to hang from</source>
        <translation>Langhantel, Bank, eine Stange zum Hängen</translation>
    </message>
    <message>
        <source>barbell, dumbbells, kettlebells, bench, bars, rings, box</source>
        <translation>Langhantel, Kurzhanteln, Kettlebells, Bank, Stangen, Ringe, Kasten</translation>
    </message>
    <message>
        <source>dumbbells and a bench</source>
        <translation>Kurzhanteln und eine Bank</translation>
    </message>
    <message>
        <source>floor and wall</source>
        <translation>Boden und Wand</translation>
    </message>
    <message>
        <source>intermediate</source>
        <translation>Mittelstufe</translation>
    </message>
    <message>
        <source>no {pattern}: it is to be avoided</source>
        <translation>{pattern} fehlt: soll gemieden werden</translation>
    </message>
    <message>
        <source>no {pattern}: the equipment has nothing for it</source>
        <translation>{pattern} fehlt: die Ausstattung hat nichts dafür</translation>
    </message>
    <message>
        <source>no {pattern}: there is no time for it</source>
        <translation>{pattern} fehlt: dafür ist keine Zeit</translation>
    </message>
    <message>
        <source>novice</source>
        <translation>Einstieg</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Muskelaufbau</translation>
    </message>
    <message>
        <source>skill</source>
        <translation>Können</translation>
    </message>
    <message>
        <source>strength</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>{day}: {first} and {second} in turn, to save time</source>
        <translation>{day}: {first} und {second} im Wechsel, um Zeit zu sparen</translation>
    </message>
    <message>
        <source>{day}: {minutes} at first, {most} at the most; {allowed} are there</source>
        <translation>{day}: anfangs {minutes}, höchstens {most}; {allowed} sind da</translation>
    </message>
    <message>
        <source>{exercise}: {fewest} to {most}, rest {rest_s}; grows by {variables}</source>
        <translation>{exercise}: {fewest} bis {most}, Pause {rest_s}; steigt über {variables}</translation>
    </message>
    <message>
        <source>{exercise}: {fewest} to {most}, {reserve} in reserve, rest {rest_s}; grows by {variables}</source>
        <translation>{exercise}: {fewest} bis {most}, {reserve} in Reserve, Pause {rest_s}; steigt über {variables}</translation>
    </message>
    <message>
        <source>{exercise}: {sets} sets on {days} days, for the {pattern}</source>
        <translation>{exercise}: {sets} Sätze an {days} Tagen, für {pattern}</translation>
    </message>
    <message>
        <source>{exercise}: {sets} sets, for the {pattern}</source>
        <translation>{exercise}: {sets} Sätze, für {pattern}</translation>
    </message>
    <message>
        <source>{muscle}: {sets} of {mark} sets; nothing there trains it</source>
        <translation>{muscle}: {sets} von {mark} Sätzen; die Ausstattung hat nichts dafür</translation>
    </message>
    <message>
        <source>{muscle}: {sets} of {mark} sets; the rest is avoided</source>
        <translation>{muscle}: {sets} von {mark} Sätzen; der Rest wird gemieden</translation>
    </message>
    <message>
        <source>{muscle}: {sets} of {mark} sets; there is no time for more</source>
        <translation>{muscle}: {sets} von {mark} Sätzen; für mehr fehlt die Zeit</translation>
    </message>
    <message>
        <source>{muscle}: {sets} sets on {days} days; the mark is {mark}</source>
        <translation>{muscle}: {sets} Sätze an {days} Tagen; die Marke ist {mark}</translation>
    </message>
    <message>
        <source>{pattern} on {first} and {second}: no other weekdays are free</source>
        <translation>{pattern} am {first} und {second}: keine anderen Wochentage sind frei</translation>
    </message>
    <message>
        <source>{push} sets pushed and {pull} pulled; {upper} of the upper body, {lower} lower</source>
        <translation>{push} Sätze Drücken und {pull} Ziehen; {upper} Oberkörper, {lower} Unterkörper</translation>
    </message>
</context>
<context>
    <name>EffectPanel</name>
    <message>
        <source>Go on typing</source>
        <translation>Weiter eingeben</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Verwerfen</translation>
    </message>
    <message>
        <source>Save the correction</source>
        <translation>Korrektur speichern</translation>
    </message>
    <message>
        <source>This session lies in the past</source>
        <translation>Diese Einheit liegt in der Vergangenheit</translation>
    </message>
</context>
<context>
    <name>EmptyDay</name>
    <message>
        <source>Add an exercise</source>
        <translation>Übung hinzufügen</translation>
    </message>
    <message>
        <source>Days away</source>
        <translation>Abwesenheit</translation>
    </message>
    <message>
        <source>Next training day</source>
        <translation>Nächster Trainingstag</translation>
    </message>
    <message>
        <source>What was trained without a plan can be typed all the same.</source>
        <translation>Was ohne Plan trainiert wurde, lässt sich trotzdem eingeben.</translation>
    </message>
</context>
<context>
    <name>EquipmentEditor</name>
    <message>
        <source>Bands, measured twice</source>
        <translation>Bänder, zweimal gemessen</translation>
    </message>
    <message>
        <source>Bars</source>
        <translation>Stangen</translation>
    </message>
    <message>
        <source>Bars to row under</source>
        <translation>Stangen zum Rudern darunter</translation>
    </message>
    <message>
        <source>Boxes, chairs, stairs</source>
        <translation>Kästen, Stühle, Stufen</translation>
    </message>
    <message>
        <source>Collars of a bar, both</source>
        <translation>Verschlüsse einer Stange, beide</translation>
    </message>
    <message>
        <source>Collars of a bar, both, {unit}</source>
        <translation>Verschlüsse einer Stange, beide, {unit}</translation>
    </message>
    <message>
        <source>Discs (not pairs)</source>
        <translation>Scheiben (nicht Paare)</translation>
    </message>
    <message>
        <source>Discs for the handles</source>
        <translation>Scheiben für die Griffe</translation>
    </message>
    <message>
        <source>Dumbbell handles to load</source>
        <translation>Kurzhantelgriffe zum Beladen</translation>
    </message>
    <message>
        <source>Dumbbells</source>
        <translation>Kurzhanteln</translation>
    </message>
    <message>
        <source>Help of a machine</source>
        <translation>Hilfe einer Maschine</translation>
    </message>
    <message>
        <source>Kettlebells</source>
        <translation>Kettlebells</translation>
    </message>
    <message>
        <source>Machines with a stack</source>
        <translation>Maschinen mit Gewichtsblock</translation>
    </message>
    <message>
        <source>There is also</source>
        <translation>Außerdem da</translation>
    </message>
    <message>
        <source>Vest or belt, loads</source>
        <translation>Weste oder Gurt, Lasten</translation>
    </message>
    <message>
        <source>bar to hang on</source>
        <translation>Stange zum Hängen</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>Bank</translation>
    </message>
    <message>
        <source>each</source>
        <translation>je</translation>
    </message>
    <message>
        <source>first</source>
        <translation>erste</translation>
    </message>
    <message>
        <source>half step</source>
        <translation>halber Schritt</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>how many</source>
        <translation>Anzahl</translation>
    </message>
    <message>
        <source>last</source>
        <translation>letzte</translation>
    </message>
    <message>
        <source>long</source>
        <translation>lang</translation>
    </message>
    <message>
        <source>low bar</source>
        <translation>niedrige Stange</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>parallel bars</source>
        <translation>Barren</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>Zug</translation>
    </message>
    <message>
        <source>rings</source>
        <translation>Ringe</translation>
    </message>
    <message>
        <source>short</source>
        <translation>kurz</translation>
    </message>
    <message>
        <source>step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>straps</source>
        <translation>Schlingen</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>Wand</translation>
    </message>
</context>
<context>
    <name>EraseQuestion</name>
    <message>
        <source>Erase everything of {name}?</source>
        <translation>Alles von {name} löschen?</translation>
    </message>
    <message>
        <source>Erase for good</source>
        <translation>Endgültig löschen</translation>
    </message>
    <message>
        <source>Everything of this person goes from the data file and from every backup and copy of it; a damaged copy, which cannot be rewritten, is removed. Files written elsewhere (sheets, exports) stay. It cannot be undone.</source>
        <translation>Alles von dieser Person verschwindet aus der Datendatei und aus jeder Sicherung und Kopie davon; eine beschädigte Kopie, die sich nicht neu schreiben lässt, wird entfernt. Anderswo abgelegte Dateien (Blätter, Exporte) bleiben. Es lässt sich nicht rückgängig machen.</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>Behalten</translation>
    </message>
    <message>
        <source>The name</source>
        <translation>Der Name</translation>
    </message>
    <message>
        <source>Type the name to go on</source>
        <translation>Den Namen eingeben, um fortzufahren</translation>
    </message>
</context>
<context>
    <name>ExerciseChoice</name>
    <message>
        <source>A few letters of its name</source>
        <translation>Ein paar Buchstaben des Namens</translation>
    </message>
    <message>
        <source>Add an exercise</source>
        <translation>Übung hinzufügen</translation>
    </message>
    <message>
        <source>Which exercise was done instead?</source>
        <translation>Welche Übung wurde stattdessen gemacht?</translation>
    </message>
    <message>
        <source>Which variation, from set {number} on?</source>
        <translation>Welche Variante, ab Satz {number}?</translation>
    </message>
</context>
<context>
    <name>ExerciseCues</name>
    <message>
        <source>A cup of tea on the lower back would stay full.</source>
        <translation>Eine Tasse Tee auf dem unteren Rücken bliebe voll.</translation>
    </message>
    <message>
        <source>All the way up, all the way down, one second at each end.</source>
        <translation>Ganz hinauf, ganz hinab, an jedem Ende eine Sekunde.</translation>
    </message>
    <message>
        <source>Anchor high, finish with long arms and a short hold.</source>
        <translation>Hoch befestigt, am Ende lange Arme und kurz halten.</translation>
    </message>
    <message>
        <source>Ankles fixed, straight line from knee to head, fall as slowly as you can.</source>
        <translation>Knöchel fixiert, gerade Linie vom Knie zum Kopf, so langsam wie möglich fallen.</translation>
    </message>
    <message>
        <source>Arm beside the ear, elbow locked, short steps.</source>
        <translation>Arm neben dem Ohr, Ellbogen gestreckt, kurze Schritte.</translation>
    </message>
    <message>
        <source>Arms long, hands travel in a big arc to the thighs.</source>
        <translation>Arme lang, die Hände gehen im großen Bogen zu den Schenkeln.</translation>
    </message>
    <message>
        <source>Back against the pad, ribs down, press without arching.</source>
        <translation>Rücken ans Polster, Rippen tief, drücken ohne Hohlkreuz.</translation>
    </message>
    <message>
        <source>Back close to the bench; stop when the upper arms are level.</source>
        <translation>Rücken nah an der Bank; aufhören, wenn die Oberarme waagerecht sind.</translation>
    </message>
    <message>
        <source>Back flat on the pad, knees as wide as the toes point.</source>
        <translation>Rücken flach am Polster, Knie so weit, wie die Zehen zeigen.</translation>
    </message>
    <message>
        <source>Back flat on the wall, shins upright, hands off the thighs.</source>
        <translation>Rücken flach an der Wand, Schienbeine senkrecht, Hände weg von den Schenkeln.</translation>
    </message>
    <message>
        <source>Band behind the back at chest height; stagger the feet.</source>
        <translation>Band hinter dem Rücken auf Brusthöhe; Füße versetzt.</translation>
    </message>
    <message>
        <source>Band round the knees, small steps, feet never touch.</source>
        <translation>Band um die Knie, kleine Schritte, die Füße berühren sich nie.</translation>
    </message>
    <message>
        <source>Band under the feet and behind the neck; bow until the hamstrings stop you.</source>
        <translation>Band unter den Füßen und im Nacken; verbeugen, bis die Beinrückseite bremst.</translation>
    </message>
    <message>
        <source>Bar to the upper chest, hips stay on the bench.</source>
        <translation>Stange zur oberen Brust, die Hüfte bleibt auf der Bank.</translation>
    </message>
    <message>
        <source>Bell between the heels, long spine, squeeze at the top.</source>
        <translation>Kettlebell zwischen den Fersen, langer Rücken, oben anspannen.</translation>
    </message>
    <message>
        <source>Bell close to the chest, elbows inside the knees at the bottom.</source>
        <translation>Kettlebell nah an der Brust, unten die Ellbogen innen an den Knien.</translation>
    </message>
    <message>
        <source>Bell held at the shoulder; do not lean towards it.</source>
        <translation>Kettlebell an der Schulter; nicht zu ihr neigen.</translation>
    </message>
    <message>
        <source>Bells on the forearms, ribs down, breathe behind the shield.</source>
        <translation>Kettlebells auf den Unterarmen, Rippen tief, hinter dem Schild atmen.</translation>
    </message>
    <message>
        <source>Bells quiet beside the thighs, eyes on the far wall.</source>
        <translation>Kettlebells ruhig neben den Schenkeln, Blick zur Wand gegenüber.</translation>
    </message>
    <message>
        <source>Big breath, knees follow the toes, stand up as if pushing the floor away.</source>
        <translation>Tief einatmen, Knie folgen den Zehen, aufstehen, als würde der Boden weggedrückt.</translation>
    </message>
    <message>
        <source>Body like a board; chest to the bar, pause, long arms at the bottom.</source>
        <translation>Körper wie ein Brett; Brust zur Stange, kurz halten, unten lange Arme.</translation>
    </message>
    <message>
        <source>Breathe out as arm and leg go long; the back stays down.</source>
        <translation>Ausatmen, während Arm und Bein lang werden; der Rücken bleibt unten.</translation>
    </message>
    <message>
        <source>Chest glued to the bench, bar touches it from below each time.</source>
        <translation>Brust fest an der Bank, die Stange berührt sie jedes Mal von unten.</translation>
    </message>
    <message>
        <source>Chest to the ceiling, hips level with the shoulders.</source>
        <translation>Brust zur Decke, Hüfte auf Schulterhöhe.</translation>
    </message>
    <message>
        <source>Chest up to meet the bar; let the shoulder blades rise again.</source>
        <translation>Brust hoch zur Stange; die Schulterblätter wieder steigen lassen.</translation>
    </message>
    <message>
        <source>Curl the hips up at the top; no swing between repetitions.</source>
        <translation>Oben die Hüfte einrollen; kein Schwingen zwischen den Wiederholungen.</translation>
    </message>
    <message>
        <source>Curl the ribs towards the hips; the hips stay where they are.</source>
        <translation>Die Rippen zur Hüfte rollen; die Hüfte bleibt, wo sie ist.</translation>
    </message>
    <message>
        <source>Deep stretch, pause, up onto the big toe.</source>
        <translation>Tief dehnen, kurz halten, hinauf auf die große Zehe.</translation>
    </message>
    <message>
        <source>Down in a straight line, most of the weight on the front heel.</source>
        <translation>Gerade nach unten, das meiste Gewicht auf der vorderen Ferse.</translation>
    </message>
    <message>
        <source>Drop the back knee straight down; the bar stays level.</source>
        <translation>Das hintere Knie gerade hinab; die Stange bleibt waagerecht.</translation>
    </message>
    <message>
        <source>Elbow tucked to the side, turn the forearm out, come back slowly.</source>
        <translation>Ellbogen an die Seite, Unterarm nach außen drehen, langsam zurück.</translation>
    </message>
    <message>
        <source>Elbow under the shoulder, lift the lower hip away from the floor.</source>
        <translation>Ellbogen unter der Schulter, die untere Hüfte vom Boden heben.</translation>
    </message>
    <message>
        <source>Elbows down in front of the ribs, no leaning back.</source>
        <translation>Ellbogen vor den Rippen hinab, nicht zurücklehnen.</translation>
    </message>
    <message>
        <source>Elbows pinned to the ribs; lower slower than you lift.</source>
        <translation>Ellbogen fest an den Rippen; langsamer senken als heben.</translation>
    </message>
    <message>
        <source>Elbows point up and stay there; lower behind the head.</source>
        <translation>Ellbogen zeigen nach oben und bleiben dort; hinter den Kopf senken.</translation>
    </message>
    <message>
        <source>Elbows stay at shoulder height; bend only there.</source>
        <translation>Ellbogen bleiben auf Schulterhöhe; nur dort beugen.</translation>
    </message>
    <message>
        <source>Elbows stay high from the first centimetre down to the last one up.</source>
        <translation>Ellbogen bleiben hoch, vom ersten Zentimeter abwärts bis zum letzten aufwärts.</translation>
    </message>
    <message>
        <source>Eyes on the bell, one position at a time, same way down.</source>
        <translation>Blick zur Kettlebell, eine Position nach der anderen, denselben Weg hinab.</translation>
    </message>
    <message>
        <source>Fists under the chin, ribs down, sit straight between the feet.</source>
        <translation>Fäuste unters Kinn, Rippen tief, gerade zwischen die Füße setzen.</translation>
    </message>
    <message>
        <source>Fix the trunk like a table; pull the elbows, not the hands.</source>
        <translation>Den Rumpf wie einen Tisch halten; die Ellbogen ziehen, nicht die Hände.</translation>
    </message>
    <message>
        <source>Forearms on the thighs; let the weight roll to the fingers.</source>
        <translation>Unterarme auf den Schenkeln; das Gewicht zu den Fingern rollen lassen.</translation>
    </message>
    <message>
        <source>Forearms upright all the way; bring the weights down beside the chest.</source>
        <translation>Unterarme durchweg senkrecht; Gewichte neben die Brust senken.</translation>
    </message>
    <message>
        <source>Free forearm on the thigh; the trunk does not turn.</source>
        <translation>Freier Unterarm auf dem Schenkel; der Rumpf dreht nicht.</translation>
    </message>
    <message>
        <source>Handles at mid-chest height, shoulder blades stay on the pad.</source>
        <translation>Griffe auf Brusthöhe, Schulterblätter bleiben am Polster.</translation>
    </message>
    <message>
        <source>Handles still, turn them out at the top, hips never sag.</source>
        <translation>Griffe ruhig, oben nach außen drehen, die Hüfte hängt nie durch.</translation>
    </message>
    <message>
        <source>Hands a shoulder&apos;s width apart, elbows close to the ribs.</source>
        <translation>Hände schulterbreit, Ellbogen nah an den Rippen.</translation>
    </message>
    <message>
        <source>Head travels forward of the hands and back: three points of one triangle.</source>
        <translation>Der Kopf geht vor die Hände und zurück: drei Punkte eines Dreiecks.</translation>
    </message>
    <message>
        <source>Heels close, drive them down, hold a second at the top.</source>
        <translation>Fersen nah, in den Boden drücken, oben eine Sekunde halten.</translation>
    </message>
    <message>
        <source>Hinge forward, spread the arms like opening a heavy curtain.</source>
        <translation>Vorbeugen, die Arme öffnen wie einen schweren Vorhang.</translation>
    </message>
    <message>
        <source>Hips and shoulders stay square while the arms go long.</source>
        <translation>Hüfte und Schultern bleiben gerade, während die Arme lang werden.</translation>
    </message>
    <message>
        <source>Hips lead, tail tucked; go only as far as the back stays flat.</source>
        <translation>Die Hüfte führt, Becken eingerollt; nur so weit, wie der Rücken flach bleibt.</translation>
    </message>
    <message>
        <source>Hips stay high while the heels slide out and back.</source>
        <translation>Die Hüfte bleibt hoch, während die Fersen hinaus- und zurückgleiten.</translation>
    </message>
    <message>
        <source>Hips stay on the pad; heels to the seat.</source>
        <translation>Die Hüfte bleibt am Polster; Fersen zum Gesäß.</translation>
    </message>
    <message>
        <source>Hold the weight against the breastbone and sit between your heels.</source>
        <translation>Das Gewicht ans Brustbein halten und zwischen die Fersen setzen.</translation>
    </message>
    <message>
        <source>Hug a barrel; hands meet in front of the breastbone.</source>
        <translation>Ein Fass umarmen; die Hände treffen sich vor dem Brustbein.</translation>
    </message>
    <message>
        <source>Kneel under the anchor, pull the elbows into the back pockets.</source>
        <translation>Unter der Befestigung knien, Ellbogen in die Gesäßtaschen ziehen.</translation>
    </message>
    <message>
        <source>Knees a hand above the floor, hips as still as a table.</source>
        <translation>Knie eine Handbreit über dem Boden, die Hüfte still wie ein Tisch.</translation>
    </message>
    <message>
        <source>Knees out over the toes, hands inside them, hips close to the bar.</source>
        <translation>Knie außen über den Zehen, Hände dazwischen, Hüfte nah an der Stange.</translation>
    </message>
    <message>
        <source>Lead with the elbows, stop at shoulder height.</source>
        <translation>Die Ellbogen führen, auf Schulterhöhe aufhören.</translation>
    </message>
    <message>
        <source>Lean first, lift second; elbows locked and turned forward.</source>
        <translation>Erst lehnen, dann heben; Ellbogen gestreckt und nach vorn gedreht.</translation>
    </message>
    <message>
        <source>Lean in with a straight body; the elbows point forward.</source>
        <translation>Mit geradem Körper vorlehnen; die Ellbogen zeigen nach vorn.</translation>
    </message>
    <message>
        <source>Let the upper arms come to rest on the floor before each push.</source>
        <translation>Die Oberarme vor jedem Drücken am Boden zur Ruhe kommen lassen.</translation>
    </message>
    <message>
        <source>Lift it like a deadlift, walk it like a full tray.</source>
        <translation>Heben wie beim Kreuzheben, gehen wie mit einem vollen Tablett.</translation>
    </message>
    <message>
        <source>Lift the shoulder blades, not the chin.</source>
        <translation>Die Schulterblätter heben, nicht das Kinn.</translation>
    </message>
    <message>
        <source>Long arms first, then drive the elbows to the ceiling.</source>
        <translation>Erst lange Arme, dann die Ellbogen zur Decke.</translation>
    </message>
    <message>
        <source>Long neck at the bottom, long pause at the top.</source>
        <translation>Unten langer Hals, oben lange Pause.</translation>
    </message>
    <message>
        <source>Long rather than high; look at the floor.</source>
        <translation>Lieber lang als hoch; Blick zum Boden.</translation>
    </message>
    <message>
        <source>Lower back stays on the pad; stop before it lifts.</source>
        <translation>Der untere Rücken bleibt am Polster; aufhören, bevor er abhebt.</translation>
    </message>
    <message>
        <source>Lower the bar behind the forehead, elbows narrow.</source>
        <translation>Die Stange hinter die Stirn senken, Ellbogen eng.</translation>
    </message>
    <message>
        <source>No bounce: a second at the bottom, a second at the top.</source>
        <translation>Kein Federn: unten eine Sekunde, oben eine Sekunde.</translation>
    </message>
    <message>
        <source>One step back from the stack, elbows just in front of the ribs.</source>
        <translation>Ein Schritt weg vom Block, Ellbogen knapp vor den Rippen.</translation>
    </message>
    <message>
        <source>One straight plank from heel to head; the chest arrives first, not the hips.</source>
        <translation>Ein gerades Brett von Ferse bis Kopf; zuerst kommt die Brust an, nicht die Hüfte.</translation>
    </message>
    <message>
        <source>Only the shoulders stay down; lower the body as one board.</source>
        <translation>Nur die Schultern bleiben liegen; den Körper wie ein Brett senken.</translation>
    </message>
    <message>
        <source>Open without leaning; close slowly.</source>
        <translation>Öffnen, ohne zu lehnen; langsam schließen.</translation>
    </message>
    <message>
        <source>Palms to you, chest to the bar, all the way down again.</source>
        <translation>Handflächen zum Gesicht, Brust zur Stange, wieder ganz hinab.</translation>
    </message>
    <message>
        <source>Pause with the hands at the ribs before letting go slowly.</source>
        <translation>Mit den Händen an den Rippen kurz halten, dann langsam lösen.</translation>
    </message>
    <message>
        <source>Press the lower back into the floor; if it lifts, shorten the lever.</source>
        <translation>Den unteren Rücken in den Boden drücken; hebt er ab, den Hebel kürzen.</translation>
    </message>
    <message>
        <source>Pull high and close, then roll the chest over the hands.</source>
        <translation>Hoch und nah ziehen, dann die Brust über die Hände rollen.</translation>
    </message>
    <message>
        <source>Pull the elbow past the hip without turning the chest.</source>
        <translation>Den Ellbogen an der Hüfte vorbeiziehen, ohne die Brust zu drehen.</translation>
    </message>
    <message>
        <source>Pull to the forehead with the elbows high and the thumbs back.</source>
        <translation>Zur Stirn ziehen, Ellbogen hoch, Daumen nach hinten.</translation>
    </message>
    <message>
        <source>Push tall out of the shoulders, ribs in, fingers steer.</source>
        <translation>Groß aus den Schultern drücken, Rippen ein, die Finger lenken.</translation>
    </message>
    <message>
        <source>Push the floor away, lock the elbows, then lift the legs.</source>
        <translation>Den Boden wegdrücken, Ellbogen strecken, dann die Beine heben.</translation>
    </message>
    <message>
        <source>Push the handle straight out and let nothing turn you.</source>
        <translation>Den Griff gerade hinausdrücken, ohne dass sich etwas dreht.</translation>
    </message>
    <message>
        <source>Push the hips back until the hamstrings are long; the bar slides down the thighs.</source>
        <translation>Hüfte nach hinten, bis die Beinrückseite lang ist; die Stange gleitet die Schenkel hinab.</translation>
    </message>
    <message>
        <source>Push through the whole foot; the hips stay square on the seat.</source>
        <translation>Über den ganzen Fuß drücken; die Hüfte bleibt gerade im Sitz.</translation>
    </message>
    <message>
        <source>Quiet steps; the front knee follows the second toe.</source>
        <translation>Leise Schritte; das vordere Knie folgt der zweiten Zehe.</translation>
    </message>
    <message>
        <source>Reach the free heel far behind you; come up as one piece.</source>
        <translation>Die freie Ferse weit nach hinten; als ein Stück hochkommen.</translation>
    </message>
    <message>
        <source>Ribs down, move the head back for the bar and under it again.</source>
        <translation>Rippen tief, den Kopf zurück für die Stange und wieder darunter.</translation>
    </message>
    <message>
        <source>Ribs down, squeeze at the top with the shins upright.</source>
        <translation>Rippen tief, oben anspannen, die Schienbeine senkrecht.</translation>
    </message>
    <message>
        <source>Rise until the body is one line, not beyond it.</source>
        <translation>Heben, bis der Körper eine Linie ist, nicht weiter.</translation>
    </message>
    <message>
        <source>Seat so that the handles start at chin height.</source>
        <translation>Sitz so, dass die Griffe auf Kinnhöhe beginnen.</translation>
    </message>
    <message>
        <source>Set the stance once, then move only up and down.</source>
        <translation>Stand einmal einnehmen, dann nur auf und ab.</translation>
    </message>
    <message>
        <source>Short dip, straight down and up; the arms finish what the legs began.</source>
        <translation>Kurz eintauchen, gerade hinab und hinauf; die Arme beenden, was die Beine beginnen.</translation>
    </message>
    <message>
        <source>Shoulder blades together, bar to the lower chest, feet push the floor.</source>
        <translation>Schulterblätter zusammen, Stange zur unteren Brust, Füße drücken in den Boden.</translation>
    </message>
    <message>
        <source>Shoulders away from the ears, thumbs round the bar.</source>
        <translation>Schultern weg von den Ohren, Daumen um die Stange.</translation>
    </message>
    <message>
        <source>Shoulders away from the ears; down until the upper arm is level.</source>
        <translation>Schultern weg von den Ohren; hinab, bis der Oberarm waagerecht ist.</translation>
    </message>
    <message>
        <source>Shoulders straight up to the ears, pause, all the way down.</source>
        <translation>Schultern gerade zu den Ohren, kurz halten, ganz hinab.</translation>
    </message>
    <message>
        <source>Sit back onto the box without rocking, pause, stand up.</source>
        <translation>Nach hinten auf den Kasten setzen, ohne zu wippen, kurz warten, aufstehen.</translation>
    </message>
    <message>
        <source>Sit over one foot, the other leg long, both heels down.</source>
        <translation>Über einen Fuß setzen, das andere Bein lang, beide Fersen unten.</translation>
    </message>
    <message>
        <source>Sit tall, shoulder blades first, then the elbows.</source>
        <translation>Groß sitzen, erst die Schulterblätter, dann die Ellbogen.</translation>
    </message>
    <message>
        <source>Slide down the side of the thigh; no twist, no hurry.</source>
        <translation>Am Schenkel seitlich hinabgleiten; keine Drehung, keine Eile.</translation>
    </message>
    <message>
        <source>Slight bend in the elbows that never changes.</source>
        <translation>Leichte Beugung der Ellbogen, die sich nie ändert.</translation>
    </message>
    <message>
        <source>Soft knees, bow from the hips, stop where the back would round.</source>
        <translation>Knie weich, aus der Hüfte verbeugen, aufhören, wo der Rücken rund würde.</translation>
    </message>
    <message>
        <source>Squeeze the free fist; the forearm stays upright all the way.</source>
        <translation>Die freie Faust ballen; der Unterarm bleibt durchweg senkrecht.</translation>
    </message>
    <message>
        <source>Stand in the middle, grip the centre of the handles, push the floor away.</source>
        <translation>In der Mitte stehen, Griffe mittig fassen, den Boden wegdrücken.</translation>
    </message>
    <message>
        <source>Stand on the band and keep it tight at the bottom too.</source>
        <translation>Auf dem Band stehen, es auch unten gespannt halten.</translation>
    </message>
    <message>
        <source>Stand on the band with the ends at the shoulders; push hardest near the top.</source>
        <translation>Auf dem Band stehen, Enden an den Schultern; nahe oben am stärksten drücken.</translation>
    </message>
    <message>
        <source>Stand on the band, hands at the shoulders, finish beside the ears.</source>
        <translation>Auf dem Band stehen, Hände an den Schultern, Ende neben den Ohren.</translation>
    </message>
    <message>
        <source>Start from long arms, pull the elbows to the ribs, chin over the bar.</source>
        <translation>Aus langen Armen, Ellbogen zu den Rippen ziehen, Kinn über die Stange.</translation>
    </message>
    <message>
        <source>Step long enough that the front shin stays nearly upright.</source>
        <translation>Schritt so lang, dass das vordere Schienbein fast senkrecht bleibt.</translation>
    </message>
    <message>
        <source>Step through without a stop at the top, tall between steps.</source>
        <translation>Ohne Halt oben durchgehen, groß zwischen den Schritten.</translation>
    </message>
    <message>
        <source>Straight arms press the bar to the hips; the body stays level.</source>
        <translation>Gestreckte Arme drücken die Stange zur Hüfte; der Körper bleibt waagerecht.</translation>
    </message>
    <message>
        <source>Straight arms, squeeze the shoulder blades as the band meets the chest.</source>
        <translation>Arme gestreckt, Schulterblätter zusammen, wenn das Band die Brust berührt.</translation>
    </message>
    <message>
        <source>Straight wrist, free arm out to the side for balance.</source>
        <translation>Handgelenk gerade, freier Arm zur Seite für das Gleichgewicht.</translation>
    </message>
    <message>
        <source>Straighten fully, hold one second, control the way down.</source>
        <translation>Ganz strecken, eine Sekunde halten, kontrolliert zurück.</translation>
    </message>
    <message>
        <source>Take the slack out of the bar first, then stand up with it close to the legs.</source>
        <translation>Erst Spannung auf die Stange, dann aufstehen, die Stange nah an den Beinen.</translation>
    </message>
    <message>
        <source>Tall and quiet: short quick steps, weights still at your sides.</source>
        <translation>Groß und ruhig: kurze schnelle Schritte, die Gewichte still an den Seiten.</translation>
    </message>
    <message>
        <source>The free leg and the trunk tip as one piece, hips square to the floor.</source>
        <translation>Freies Bein und Rumpf kippen als ein Stück, die Hüfte gerade zum Boden.</translation>
    </message>
    <message>
        <source>The hips throw the bell; the arms are ropes.</source>
        <translation>Die Hüfte wirft die Kettlebell; die Arme sind Seile.</translation>
    </message>
    <message>
        <source>The upper leg lifts you; the lower foot only lets go.</source>
        <translation>Das obere Bein hebt; der untere Fuß lässt nur los.</translation>
    </message>
    <message>
        <source>Thumbs under the breastbone, elbows brush the ribs.</source>
        <translation>Daumen unter dem Brustbein, Ellbogen streifen die Rippen.</translation>
    </message>
    <message>
        <source>Thumbs up from start to end, shoulders still.</source>
        <translation>Daumen von Anfang bis Ende oben, Schultern still.</translation>
    </message>
    <message>
        <source>Toes on the edge, heels sink before every repetition.</source>
        <translation>Zehen auf der Kante, vor jeder Wiederholung sinken die Fersen.</translation>
    </message>
    <message>
        <source>Tuck the tail, squeeze the glutes, keep breathing.</source>
        <translation>Becken einrollen, Gesäß anspannen, weiteratmen.</translation>
    </message>
    <message>
        <source>Turn the breastbone, not just the arms; heels light.</source>
        <translation>Das Brustbein drehen, nicht nur die Arme; Fersen leicht.</translation>
    </message>
    <message>
        <source>Turn the palms up on the way, no swing of the hips.</source>
        <translation>Unterwegs die Handflächen nach oben drehen, kein Schwung aus der Hüfte.</translation>
    </message>
    <message>
        <source>Upper arms are posts; only the forearms move.</source>
        <translation>Die Oberarme sind Pfosten; nur die Unterarme bewegen sich.</translation>
    </message>
    <message>
        <source>Walk as if both hands were full; no lean to either side.</source>
        <translation>Gehen, als wären beide Hände voll; zu keiner Seite neigen.</translation>
    </message>
    <message>
        <source>Walk away from the stack, let the cable pull the hips back, snap them forward.</source>
        <translation>Vom Block weggehen, das Kabel die Hüfte zurückziehen lassen, nach vorn strecken.</translation>
    </message>
    <message>
        <source>Walk the feet forward to make it harder; the hips never sag.</source>
        <translation>Füße weiter vor macht es schwerer; die Hüfte hängt nie durch.</translation>
    </message>
    <message>
        <source>Weights brush the thighs; the hips travel back, not down.</source>
        <translation>Gewichte streifen die Schenkel; die Hüfte geht nach hinten, nicht nach unten.</translation>
    </message>
    <message>
        <source>Weights hang beside the ankles, chest stays open.</source>
        <translation>Gewichte hängen neben den Knöcheln, die Brust bleibt offen.</translation>
    </message>
    <message>
        <source>Weights hang still; the front leg does the work.</source>
        <translation>Gewichte hängen still; das vordere Bein arbeitet.</translation>
    </message>
    <message>
        <source>Whole foot on the box, stand tall on top before coming down.</source>
        <translation>Ganzer Fuß auf dem Kasten, oben groß stehen, dann erst hinab.</translation>
    </message>
    <message>
        <source>Whole foot on the floor, knee over the toes, no bounce at the bottom.</source>
        <translation>Ganzer Fuß am Boden, Knie über den Zehen, unten kein Federn.</translation>
    </message>
    <message>
        <source>Wrists over elbows; finish with the arms beside the ears.</source>
        <translation>Handgelenke über den Ellbogen; am Ende die Arme neben den Ohren.</translation>
    </message>
    <message>
        <source>Wrists over elbows; lower until the upper arms pass the bench.</source>
        <translation>Handgelenke über den Ellbogen; senken, bis die Oberarme an der Bank vorbei sind.</translation>
    </message>
</context>
<context>
    <name>ExerciseNames</name>
    <message>
        <source>Anti-rotation press</source>
        <translation>Antirotationsdrücken</translation>
    </message>
    <message>
        <source>Arch hold</source>
        <translation>Schiffchen in Bauchlage</translation>
    </message>
    <message>
        <source>Back extension</source>
        <translation>Rückenstrecken</translation>
    </message>
    <message>
        <source>Back squat</source>
        <translation>Kniebeuge</translation>
    </message>
    <message>
        <source>Band anti-rotation press</source>
        <translation>Antirotationsdrücken mit Band</translation>
    </message>
    <message>
        <source>Band chest press</source>
        <translation>Brustdrücken mit Band</translation>
    </message>
    <message>
        <source>Band curl</source>
        <translation>Curl mit Band</translation>
    </message>
    <message>
        <source>Band external rotation</source>
        <translation>Außenrotation mit Band</translation>
    </message>
    <message>
        <source>Band good morning</source>
        <translation>Good Morning mit Band</translation>
    </message>
    <message>
        <source>Band overhead press</source>
        <translation>Schulterdrücken mit Band</translation>
    </message>
    <message>
        <source>Band pull-apart</source>
        <translation>Auseinanderziehen mit Band</translation>
    </message>
    <message>
        <source>Band pulldown</source>
        <translation>Latzug mit Band</translation>
    </message>
    <message>
        <source>Band pushdown</source>
        <translation>Trizepsdrücken mit Band</translation>
    </message>
    <message>
        <source>Band row</source>
        <translation>Rudern mit Band</translation>
    </message>
    <message>
        <source>Band side walk</source>
        <translation>Seitgang mit Band</translation>
    </message>
    <message>
        <source>Band squat</source>
        <translation>Kniebeuge mit Band</translation>
    </message>
    <message>
        <source>Barbell curl</source>
        <translation>Langhantelcurl</translation>
    </message>
    <message>
        <source>Barbell lunge</source>
        <translation>Ausfallschritt mit Langhantel</translation>
    </message>
    <message>
        <source>Barbell shrug</source>
        <translation>Schulterheben mit Langhantel</translation>
    </message>
    <message>
        <source>Barbell split squat</source>
        <translation>Ausfallkniebeuge mit Langhantel</translation>
    </message>
    <message>
        <source>Bench dip</source>
        <translation>Dip an der Bank</translation>
    </message>
    <message>
        <source>Bench press</source>
        <translation>Bankdrücken</translation>
    </message>
    <message>
        <source>Bench pull</source>
        <translation>Bankziehen</translation>
    </message>
    <message>
        <source>Bent-over rear raise</source>
        <translation>Seitheben vorgebeugt</translation>
    </message>
    <message>
        <source>Bent-over row</source>
        <translation>Langhantelrudern</translation>
    </message>
    <message>
        <source>Bird dog</source>
        <translation>Bird Dog</translation>
    </message>
    <message>
        <source>Bodyweight lunge</source>
        <translation>Ausfallschritt</translation>
    </message>
    <message>
        <source>Bodyweight single-leg hinge</source>
        <translation>Einbeinige Hüftbeuge</translation>
    </message>
    <message>
        <source>Bodyweight squat</source>
        <translation>Kniebeuge mit Körpergewicht</translation>
    </message>
    <message>
        <source>Box squat</source>
        <translation>Kastenkniebeuge</translation>
    </message>
    <message>
        <source>Cable chest fly</source>
        <translation>Fliegende am Kabel</translation>
    </message>
    <message>
        <source>Cable crunch</source>
        <translation>Crunch am Kabel</translation>
    </message>
    <message>
        <source>Cable curl</source>
        <translation>Curl am Kabel</translation>
    </message>
    <message>
        <source>Cable pull-through</source>
        <translation>Durchziehen am Kabel</translation>
    </message>
    <message>
        <source>Calf raise</source>
        <translation>Wadenheben</translation>
    </message>
    <message>
        <source>Chest-supported dumbbell row</source>
        <translation>Kurzhantelrudern auf der Schrägbank</translation>
    </message>
    <message>
        <source>Chin-up</source>
        <translation>Klimmzug im Untergriff</translation>
    </message>
    <message>
        <source>Close-grip bench press</source>
        <translation>Enges Bankdrücken</translation>
    </message>
    <message>
        <source>Close-grip pulldown</source>
        <translation>Enger Latzug</translation>
    </message>
    <message>
        <source>Close-hands push-up</source>
        <translation>Enger Liegestütz</translation>
    </message>
    <message>
        <source>Crawl</source>
        <translation>Vierfüßlergang</translation>
    </message>
    <message>
        <source>Curl on straps</source>
        <translation>Curl an Schlingen</translation>
    </message>
    <message>
        <source>Curl-up</source>
        <translation>Rumpfaufrollen</translation>
    </message>
    <message>
        <source>Dead bug</source>
        <translation>Dead Bug</translation>
    </message>
    <message>
        <source>Deadlift</source>
        <translation>Kreuzheben</translation>
    </message>
    <message>
        <source>Dip</source>
        <translation>Dip</translation>
    </message>
    <message>
        <source>Dumbbell Romanian deadlift</source>
        <translation>Rumänisches Kreuzheben mit Kurzhanteln</translation>
    </message>
    <message>
        <source>Dumbbell bench press</source>
        <translation>Kurzhantel-Bankdrücken</translation>
    </message>
    <message>
        <source>Dumbbell calf raise</source>
        <translation>Wadenheben mit Kurzhanteln</translation>
    </message>
    <message>
        <source>Dumbbell chest fly</source>
        <translation>Fliegende mit Kurzhanteln</translation>
    </message>
    <message>
        <source>Dumbbell curl</source>
        <translation>Kurzhantelcurl</translation>
    </message>
    <message>
        <source>Dumbbell floor press</source>
        <translation>Kurzhantel-Bodendrücken</translation>
    </message>
    <message>
        <source>Dumbbell lunge</source>
        <translation>Ausfallschritt mit Kurzhanteln</translation>
    </message>
    <message>
        <source>Dumbbell overhead press</source>
        <translation>Kurzhantel-Schulterdrücken</translation>
    </message>
    <message>
        <source>Dumbbell shrug</source>
        <translation>Schulterheben mit Kurzhanteln</translation>
    </message>
    <message>
        <source>Dumbbell split squat</source>
        <translation>Ausfallkniebeuge mit Kurzhanteln</translation>
    </message>
    <message>
        <source>Dumbbell squat</source>
        <translation>Kurzhantel-Kniebeuge</translation>
    </message>
    <message>
        <source>Dumbbell step-up</source>
        <translation>Aufsteigen mit Kurzhanteln</translation>
    </message>
    <message>
        <source>Face pull</source>
        <translation>Face Pull</translation>
    </message>
    <message>
        <source>Farmer&apos;s carry</source>
        <translation>Bauerngang</translation>
    </message>
    <message>
        <source>Front lever</source>
        <translation>Front Lever</translation>
    </message>
    <message>
        <source>Front squat</source>
        <translation>Frontkniebeuge</translation>
    </message>
    <message>
        <source>Front-rack carry</source>
        <translation>Tragen vor der Brust</translation>
    </message>
    <message>
        <source>Glute bridge</source>
        <translation>Hüftbrücke</translation>
    </message>
    <message>
        <source>Goblet squat</source>
        <translation>Goblet-Kniebeuge</translation>
    </message>
    <message>
        <source>Good morning</source>
        <translation>Good Morning</translation>
    </message>
    <message>
        <source>Hammer curl</source>
        <translation>Hammercurl</translation>
    </message>
    <message>
        <source>Handstand</source>
        <translation>Handstand</translation>
    </message>
    <message>
        <source>Handstand push-up</source>
        <translation>Handstandliegestütz</translation>
    </message>
    <message>
        <source>Hang</source>
        <translation>Hängen</translation>
    </message>
    <message>
        <source>Hanging knee and leg raise</source>
        <translation>Knie- und Beinheben im Hang</translation>
    </message>
    <message>
        <source>Hex-bar carry</source>
        <translation>Tragen mit Hexstange</translation>
    </message>
    <message>
        <source>Hex-bar deadlift</source>
        <translation>Kreuzheben mit Hexstange</translation>
    </message>
    <message>
        <source>Hip abduction</source>
        <translation>Hüftabduktion</translation>
    </message>
    <message>
        <source>Hip thrust</source>
        <translation>Hüftstoß</translation>
    </message>
    <message>
        <source>Hollow hold</source>
        <translation>Schiffchen in Rückenlage</translation>
    </message>
    <message>
        <source>Incline bench press</source>
        <translation>Schrägbankdrücken</translation>
    </message>
    <message>
        <source>Incline dumbbell press</source>
        <translation>Kurzhantel-Schrägbankdrücken</translation>
    </message>
    <message>
        <source>Kettlebell carry</source>
        <translation>Tragen mit Kettlebells</translation>
    </message>
    <message>
        <source>Kettlebell deadlift</source>
        <translation>Kreuzheben mit Kettlebell</translation>
    </message>
    <message>
        <source>Kettlebell floor press</source>
        <translation>Kettlebell-Bodendrücken</translation>
    </message>
    <message>
        <source>Kettlebell front squat</source>
        <translation>Frontkniebeuge mit Kettlebell</translation>
    </message>
    <message>
        <source>Kettlebell get-up</source>
        <translation>Aufstehen mit Kettlebell</translation>
    </message>
    <message>
        <source>Kettlebell goblet squat</source>
        <translation>Goblet-Kniebeuge mit Kettlebell</translation>
    </message>
    <message>
        <source>Kettlebell lunge</source>
        <translation>Ausfallschritt mit Kettlebell</translation>
    </message>
    <message>
        <source>Kettlebell row</source>
        <translation>Kettlebell-Rudern</translation>
    </message>
    <message>
        <source>Kettlebell swing</source>
        <translation>Kettlebell-Swing</translation>
    </message>
    <message>
        <source>Kneeling hamstring lowering</source>
        <translation>Absenken im Kniestand</translation>
    </message>
    <message>
        <source>L-sit</source>
        <translation>L-Sitz</translation>
    </message>
    <message>
        <source>Lateral raise</source>
        <translation>Seitheben</translation>
    </message>
    <message>
        <source>Leg curl</source>
        <translation>Beinbeugen</translation>
    </message>
    <message>
        <source>Leg extension</source>
        <translation>Beinstrecken</translation>
    </message>
    <message>
        <source>Leg press</source>
        <translation>Beinpresse</translation>
    </message>
    <message>
        <source>Lying body lever</source>
        <translation>Liegender Körperhebel</translation>
    </message>
    <message>
        <source>Lying triceps extension</source>
        <translation>Trizepsstrecken liegend</translation>
    </message>
    <message>
        <source>Machine chest press</source>
        <translation>Brustpresse</translation>
    </message>
    <message>
        <source>Machine shoulder press</source>
        <translation>Schulterpresse</translation>
    </message>
    <message>
        <source>Machine squat</source>
        <translation>Maschinenkniebeuge</translation>
    </message>
    <message>
        <source>Muscle-up</source>
        <translation>Muscle-up</translation>
    </message>
    <message>
        <source>One-arm dumbbell row</source>
        <translation>Einarmiges Kurzhantelrudern</translation>
    </message>
    <message>
        <source>One-arm kettlebell press</source>
        <translation>Einarmiges Kettlebell-Drücken</translation>
    </message>
    <message>
        <source>Overhead carry</source>
        <translation>Überkopftragen</translation>
    </message>
    <message>
        <source>Overhead press</source>
        <translation>Schulterdrücken</translation>
    </message>
    <message>
        <source>Overhead triceps extension</source>
        <translation>Trizepsstrecken über Kopf</translation>
    </message>
    <message>
        <source>Planche</source>
        <translation>Planche</translation>
    </message>
    <message>
        <source>Plank</source>
        <translation>Unterarmstütz</translation>
    </message>
    <message>
        <source>Pull-up</source>
        <translation>Klimmzug</translation>
    </message>
    <message>
        <source>Pulldown</source>
        <translation>Latzug</translation>
    </message>
    <message>
        <source>Push press</source>
        <translation>Schwungdrücken</translation>
    </message>
    <message>
        <source>Push-up</source>
        <translation>Liegestütz</translation>
    </message>
    <message>
        <source>Push-up on straps</source>
        <translation>Liegestütz an Schlingen</translation>
    </message>
    <message>
        <source>Reverse plank</source>
        <translation>Rückstütz</translation>
    </message>
    <message>
        <source>Rollout</source>
        <translation>Ausrollen</translation>
    </message>
    <message>
        <source>Romanian deadlift</source>
        <translation>Rumänisches Kreuzheben</translation>
    </message>
    <message>
        <source>Row on straps</source>
        <translation>Rudern an Schlingen</translation>
    </message>
    <message>
        <source>Row under a bar</source>
        <translation>Rudern unter der Stange</translation>
    </message>
    <message>
        <source>Seated cable row</source>
        <translation>Kabelrudern</translation>
    </message>
    <message>
        <source>Seated calf raise</source>
        <translation>Wadenheben sitzend</translation>
    </message>
    <message>
        <source>Seated dumbbell press</source>
        <translation>Kurzhanteldrücken sitzend</translation>
    </message>
    <message>
        <source>Seated twist</source>
        <translation>Rumpfdrehen im Sitz</translation>
    </message>
    <message>
        <source>Side bend</source>
        <translation>Seitbeuge</translation>
    </message>
    <message>
        <source>Side lunge</source>
        <translation>Seitlicher Ausfallschritt</translation>
    </message>
    <message>
        <source>Side plank</source>
        <translation>Seitstütz</translation>
    </message>
    <message>
        <source>Single-leg Romanian deadlift</source>
        <translation>Einbeiniges rumänisches Kreuzheben</translation>
    </message>
    <message>
        <source>Single-leg press</source>
        <translation>Einbeinige Beinpresse</translation>
    </message>
    <message>
        <source>Sliding leg curl</source>
        <translation>Gleitendes Beinbeugen</translation>
    </message>
    <message>
        <source>Split squat</source>
        <translation>Ausfallkniebeuge</translation>
    </message>
    <message>
        <source>Standing machine calf raise</source>
        <translation>Wadenheben an der Maschine</translation>
    </message>
    <message>
        <source>Step-up</source>
        <translation>Aufsteigen</translation>
    </message>
    <message>
        <source>Straight-arm pulldown</source>
        <translation>Latzug mit gestreckten Armen</translation>
    </message>
    <message>
        <source>Suitcase carry</source>
        <translation>Koffertragen</translation>
    </message>
    <message>
        <source>Triceps extension on straps</source>
        <translation>Trizepsstrecken an Schlingen</translation>
    </message>
    <message>
        <source>Triceps pushdown</source>
        <translation>Trizepsdrücken am Kabel</translation>
    </message>
    <message>
        <source>Walking lunge</source>
        <translation>Ausfallschritt im Gehen</translation>
    </message>
    <message>
        <source>Wall sit</source>
        <translation>Wandsitz</translation>
    </message>
    <message>
        <source>Wide-stance deadlift</source>
        <translation>Breites Kreuzheben</translation>
    </message>
    <message>
        <source>Wrist curl</source>
        <translation>Handgelenkcurl</translation>
    </message>
</context>
<context>
    <name>ExerciseVariations</name>
    <message>
        <source>all the way up, arms crossed</source>
        <translation>ganz hinauf, Arme gekreuzt</translation>
    </message>
    <message>
        <source>arms beside the ears</source>
        <translation>Arme neben den Ohren</translation>
    </message>
    <message>
        <source>arms crossed</source>
        <translation>Arme gekreuzt</translation>
    </message>
    <message>
        <source>at the wall</source>
        <translation>an der Wand</translation>
    </message>
    <message>
        <source>at the wall, hands raised for depth</source>
        <translation>an der Wand, Hände erhöht</translation>
    </message>
    <message>
        <source>at the wall, lowering only</source>
        <translation>an der Wand, nur absenken</translation>
    </message>
    <message>
        <source>back flat, hips at a right angle</source>
        <translation>Rücken flach, Hüfte im rechten Winkel</translation>
    </message>
    <message>
        <source>back leg free</source>
        <translation>hinteres Bein frei</translation>
    </message>
    <message>
        <source>back leg free, arms beside the ears</source>
        <translation>hinteres Bein frei, Arme neben den Ohren</translation>
    </message>
    <message>
        <source>back to the wall, heels leaving it</source>
        <translation>Rücken zur Wand, Fersen lösen sich</translation>
    </message>
    <message>
        <source>back toe touching the floor</source>
        <translation>hintere Zehe am Boden</translation>
    </message>
    <message>
        <source>backward</source>
        <translation>rückwärts</translation>
    </message>
    <message>
        <source>body 15° from upright</source>
        <translation>Körper 15° aus der Senkrechten</translation>
    </message>
    <message>
        <source>body 30° from upright</source>
        <translation>Körper 30° aus der Senkrechten</translation>
    </message>
    <message>
        <source>body 45° from upright</source>
        <translation>Körper 45° aus der Senkrechten</translation>
    </message>
    <message>
        <source>body 60° from upright</source>
        <translation>Körper 60° aus der Senkrechten</translation>
    </message>
    <message>
        <source>body 75° from upright</source>
        <translation>Körper 75° aus der Senkrechten</translation>
    </message>
    <message>
        <source>body half way</source>
        <translation>Körper halb schräg</translation>
    </message>
    <message>
        <source>body level</source>
        <translation>Körper waagerecht</translation>
    </message>
    <message>
        <source>body level, arms spread wide</source>
        <translation>Körper waagerecht, Arme weit</translation>
    </message>
    <message>
        <source>body level, one arm</source>
        <translation>Körper waagerecht, ein Arm</translation>
    </message>
    <message>
        <source>body near level</source>
        <translation>Körper fast waagerecht</translation>
    </message>
    <message>
        <source>body near upright</source>
        <translation>Körper fast aufrecht</translation>
    </message>
    <message>
        <source>both feet on a box</source>
        <translation>beide Füße auf dem Kasten</translation>
    </message>
    <message>
        <source>both feet on the floor</source>
        <translation>beide Füße am Boden</translation>
    </message>
    <message>
        <source>both hands on towels</source>
        <translation>beide Hände an Handtüchern</translation>
    </message>
    <message>
        <source>both hands, passive</source>
        <translation>beide Hände, passiv</translation>
    </message>
    <message>
        <source>both hands, shoulder blades down</source>
        <translation>beide Hände, Schulterblätter tief</translation>
    </message>
    <message>
        <source>both knees to hip height</source>
        <translation>beide Knie auf Hüfthöhe</translation>
    </message>
    <message>
        <source>both knees to the chest</source>
        <translation>beide Knie zur Brust</translation>
    </message>
    <message>
        <source>both legs straight and level</source>
        <translation>beide Beine gestreckt und waagerecht</translation>
    </message>
    <message>
        <source>both legs, heels off a step</source>
        <translation>beide Beine, Fersen über der Kante</translation>
    </message>
    <message>
        <source>both legs, on the floor</source>
        <translation>beide Beine, am Boden</translation>
    </message>
    <message>
        <source>chest and legs up, arms at the ears</source>
        <translation>Brust und Beine hoch, Arme an den Ohren</translation>
    </message>
    <message>
        <source>chest and legs up, arms by the sides</source>
        <translation>Brust und Beine hoch, Arme an den Seiten</translation>
    </message>
    <message>
        <source>chest to the bar</source>
        <translation>Brust zur Stange</translation>
    </message>
    <message>
        <source>chest to the wall</source>
        <translation>Brust zur Wand</translation>
    </message>
    <message>
        <source>chest to the wall, toes leaving it</source>
        <translation>Brust zur Wand, Zehen lösen sich</translation>
    </message>
    <message>
        <source>chest up, feet down</source>
        <translation>Brust hoch, Füße unten</translation>
    </message>
    <message>
        <source>chin-up from long arms</source>
        <translation>Klimmzug im Untergriff aus langen Armen</translation>
    </message>
    <message>
        <source>dip between bars</source>
        <translation>Dip am Barren</translation>
    </message>
    <message>
        <source>dip on rings</source>
        <translation>Dip an Ringen</translation>
    </message>
    <message>
        <source>down and up with a light push of the hands</source>
        <translation>hinab und hinauf, leichte Hilfe der Hände</translation>
    </message>
    <message>
        <source>down and up without hands</source>
        <translation>hinab und hinauf ohne Hände</translation>
    </message>
    <message>
        <source>elbows in front of the eyes</source>
        <translation>Ellbogen vor den Augen</translation>
    </message>
    <message>
        <source>feet higher than the shoulders</source>
        <translation>Füße höher als die Schultern</translation>
    </message>
    <message>
        <source>feet on a box</source>
        <translation>Füße auf dem Kasten</translation>
    </message>
    <message>
        <source>feet on a box take some weight</source>
        <translation>Füße auf dem Kasten helfen</translation>
    </message>
    <message>
        <source>feet on a box, body level</source>
        <translation>Füße auf dem Kasten, Körper waagerecht</translation>
    </message>
    <message>
        <source>feet on top of each other</source>
        <translation>Füße übereinander</translation>
    </message>
    <message>
        <source>feet one before the other</source>
        <translation>Füße hintereinander</translation>
    </message>
    <message>
        <source>forward</source>
        <translation>vorwärts</translation>
    </message>
    <message>
        <source>free standing</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>from the feet</source>
        <translation>von den Füßen</translation>
    </message>
    <message>
        <source>from the feet, up to a wall</source>
        <translation>von den Füßen, bis zur Wand</translation>
    </message>
    <message>
        <source>from the knees</source>
        <translation>von den Knien</translation>
    </message>
    <message>
        <source>from the knees, up to a wall</source>
        <translation>von den Knien, bis zur Wand</translation>
    </message>
    <message>
        <source>hand on a support</source>
        <translation>Hand an einer Stütze</translation>
    </message>
    <message>
        <source>hands and feet on the floor</source>
        <translation>Hände und Füße am Boden</translation>
    </message>
    <message>
        <source>hands on a bench, 43 cm</source>
        <translation>Hände auf der Bank, 43 cm</translation>
    </message>
    <message>
        <source>hands on a wall</source>
        <translation>Hände an der Wand</translation>
    </message>
    <message>
        <source>hands slide up the thighs</source>
        <translation>Hände gleiten die Schenkel hinauf</translation>
    </message>
    <message>
        <source>heels on a box</source>
        <translation>Fersen auf dem Kasten</translation>
    </message>
    <message>
        <source>heels tap the floor, knees bent</source>
        <translation>Fersen tippen auf, Knie gebeugt</translation>
    </message>
    <message>
        <source>hips above the knees</source>
        <translation>Hüfte über den Knien</translation>
    </message>
    <message>
        <source>hips bent, hands ready</source>
        <translation>Hüfte gebeugt, Hände bereit</translation>
    </message>
    <message>
        <source>hips high, feet on a box</source>
        <translation>Hüfte hoch, Füße auf dem Kasten</translation>
    </message>
    <message>
        <source>hips high, feet on the floor</source>
        <translation>Hüfte hoch, Füße am Boden</translation>
    </message>
    <message>
        <source>hips lifted, feet on the floor</source>
        <translation>Hüfte angehoben, Füße am Boden</translation>
    </message>
    <message>
        <source>hips on a bench, arms beside the ears</source>
        <translation>Hüfte auf der Bank, Arme neben den Ohren</translation>
    </message>
    <message>
        <source>hips on a bench, knees bent</source>
        <translation>Hüfte auf der Bank, Knie gebeugt</translation>
    </message>
    <message>
        <source>hips on a bench, legs held</source>
        <translation>Hüfte auf der Bank, Beine gehalten</translation>
    </message>
    <message>
        <source>hips on a bench, one leg held</source>
        <translation>Hüfte auf der Bank, ein Bein gehalten</translation>
    </message>
    <message>
        <source>hips over hands, feet on a box</source>
        <translation>Hüfte über den Händen, Füße auf dem Kasten</translation>
    </message>
    <message>
        <source>hips straight, knees bent</source>
        <translation>Hüfte gestreckt, Knie gebeugt</translation>
    </message>
    <message>
        <source>hold at the top, then lower</source>
        <translation>oben halten, dann absenken</translation>
    </message>
    <message>
        <source>knees bent, arms forward</source>
        <translation>Knie gebeugt, Arme vor</translation>
    </message>
    <message>
        <source>knees bent, feet near</source>
        <translation>Knie gebeugt, Füße nah</translation>
    </message>
    <message>
        <source>knees bent, like a table</source>
        <translation>Knie gebeugt, wie ein Tisch</translation>
    </message>
    <message>
        <source>knees off the floor, holding still</source>
        <translation>Knie angehoben, still halten</translation>
    </message>
    <message>
        <source>knees to the chest</source>
        <translation>Knie zur Brust</translation>
    </message>
    <message>
        <source>leaning forward, toes on the floor</source>
        <translation>vorgelehnt, Zehen am Boden</translation>
    </message>
    <message>
        <source>leg only</source>
        <translation>nur das Bein</translation>
    </message>
    <message>
        <source>legs apart, straight</source>
        <translation>Beine gegrätscht, gestreckt</translation>
    </message>
    <message>
        <source>legs straight and together</source>
        <translation>Beine gestreckt und geschlossen</translation>
    </message>
    <message>
        <source>legs straight and wide apart</source>
        <translation>Beine gestreckt und weit gegrätscht</translation>
    </message>
    <message>
        <source>legs straight, above level</source>
        <translation>Beine gestreckt, über waagerecht</translation>
    </message>
    <message>
        <source>legs straight, arms at the ears</source>
        <translation>Beine gestreckt, Arme an den Ohren</translation>
    </message>
    <message>
        <source>legs straight, arms forward</source>
        <translation>Beine gestreckt, Arme vor</translation>
    </message>
    <message>
        <source>legs straight, heels on the floor</source>
        <translation>Beine gestreckt, Fersen am Boden</translation>
    </message>
    <message>
        <source>legs straight, on the elbows</source>
        <translation>Beine gestreckt, auf den Ellbogen</translation>
    </message>
    <message>
        <source>legs straight, on the hands</source>
        <translation>Beine gestreckt, auf den Händen</translation>
    </message>
    <message>
        <source>legs straight, one leg raised</source>
        <translation>Beine gestreckt, ein Bein angehoben</translation>
    </message>
    <message>
        <source>lower foot never rests</source>
        <translation>unterer Fuß setzt nie ab</translation>
    </message>
    <message>
        <source>lower foot on its heel, no push</source>
        <translation>unterer Fuß auf der Ferse, ohne Abdruck</translation>
    </message>
    <message>
        <source>lowering only, on a bar</source>
        <translation>nur absenken, an der Stange</translation>
    </message>
    <message>
        <source>lowering only, step back up</source>
        <translation>nur absenken, wieder hochsteigen</translation>
    </message>
    <message>
        <source>lying on the floor, chest up</source>
        <translation>am Boden liegend, Brust hoch</translation>
    </message>
    <message>
        <source>no push, three seconds down</source>
        <translation>ohne Abdruck, drei Sekunden hinab</translation>
    </message>
    <message>
        <source>on a bar</source>
        <translation>an der Stange</translation>
    </message>
    <message>
        <source>on forearms and toes</source>
        <translation>auf Unterarmen und Zehen</translation>
    </message>
    <message>
        <source>on one arm</source>
        <translation>auf einem Arm</translation>
    </message>
    <message>
        <source>on rings</source>
        <translation>an Ringen</translation>
    </message>
    <message>
        <source>on the knees</source>
        <translation>auf den Knien</translation>
    </message>
    <message>
        <source>on the knees, hands on a box</source>
        <translation>auf den Knien, Hände auf dem Kasten</translation>
    </message>
    <message>
        <source>one arm</source>
        <translation>ein Arm</translation>
    </message>
    <message>
        <source>one arm to the side</source>
        <translation>ein Arm zur Seite</translation>
    </message>
    <message>
        <source>one arm, other hand on a strap</source>
        <translation>ein Arm, andere Hand an einer Schlinge</translation>
    </message>
    <message>
        <source>one foot off the floor</source>
        <translation>ein Fuß angehoben</translation>
    </message>
    <message>
        <source>one hand</source>
        <translation>eine Hand</translation>
    </message>
    <message>
        <source>one hand on a towel over the bar</source>
        <translation>eine Hand am Handtuch über der Stange</translation>
    </message>
    <message>
        <source>one knee at a time</source>
        <translation>ein Knie nach dem anderen</translation>
    </message>
    <message>
        <source>one leg goes long</source>
        <translation>ein Bein wird lang</translation>
    </message>
    <message>
        <source>one leg straight</source>
        <translation>ein Bein gestreckt</translation>
    </message>
    <message>
        <source>one leg straight, arms forward</source>
        <translation>ein Bein gestreckt, Arme vor</translation>
    </message>
    <message>
        <source>one leg straight, the other tucked</source>
        <translation>ein Bein gestreckt, das andere angezogen</translation>
    </message>
    <message>
        <source>one leg, foot on the floor</source>
        <translation>ein Bein, Fuß am Boden</translation>
    </message>
    <message>
        <source>one leg, heel off a step</source>
        <translation>ein Bein, Ferse über der Kante</translation>
    </message>
    <message>
        <source>one leg, on the floor</source>
        <translation>ein Bein, am Boden</translation>
    </message>
    <message>
        <source>one leg, shoulders on a bench</source>
        <translation>ein Bein, Schultern auf der Bank</translation>
    </message>
    <message>
        <source>opposite arm and leg</source>
        <translation>Arm und Bein diagonal</translation>
    </message>
    <message>
        <source>opposite arm and leg from a plank</source>
        <translation>Arm und Bein diagonal aus dem Stütz</translation>
    </message>
    <message>
        <source>opposite arm and leg go long</source>
        <translation>Arm und Bein diagonal werden lang</translation>
    </message>
    <message>
        <source>opposite arm and leg, five seconds each</source>
        <translation>Arm und Bein diagonal, je fünf Sekunden</translation>
    </message>
    <message>
        <source>out and back on both legs</source>
        <translation>beidbeinig hinaus und zurück</translation>
    </message>
    <message>
        <source>out and back on one leg</source>
        <translation>einbeinig hinaus und zurück</translation>
    </message>
    <message>
        <source>out on one leg, back on both</source>
        <translation>einbeinig hinaus, beidbeinig zurück</translation>
    </message>
    <message>
        <source>pull-up from long arms</source>
        <translation>Klimmzug aus langen Armen</translation>
    </message>
    <message>
        <source>rear foot on a box</source>
        <translation>hinterer Fuß auf dem Kasten</translation>
    </message>
    <message>
        <source>shoulders on a bench</source>
        <translation>Schultern auf der Bank</translation>
    </message>
    <message>
        <source>sideways</source>
        <translation>seitwärts</translation>
    </message>
    <message>
        <source>single-leg squat to a box</source>
        <translation>einbeinig auf den Kasten</translation>
    </message>
    <message>
        <source>single-leg squat, full depth</source>
        <translation>einbeinig, volle Tiefe</translation>
    </message>
    <message>
        <source>single-leg squat, hand on a support</source>
        <translation>einbeinig, Hand an einer Stütze</translation>
    </message>
    <message>
        <source>slide out only, hips down to return</source>
        <translation>nur hinaus, zurück mit Hüfte am Boden</translation>
    </message>
    <message>
        <source>squat on both legs</source>
        <translation>auf beiden Beinen</translation>
    </message>
    <message>
        <source>squat to a box</source>
        <translation>auf den Kasten</translation>
    </message>
    <message>
        <source>staggered squat, most weight on one leg</source>
        <translation>versetzt, das meiste auf einem Bein</translation>
    </message>
    <message>
        <source>step back</source>
        <translation>Schritt zurück</translation>
    </message>
    <message>
        <source>step back from a step</source>
        <translation>Schritt zurück von einer Stufe</translation>
    </message>
    <message>
        <source>step back, hand on a support</source>
        <translation>zurück, Hand an einer Stütze</translation>
    </message>
    <message>
        <source>step forward</source>
        <translation>Schritt vor</translation>
    </message>
    <message>
        <source>straight body, all the way down, push back up</source>
        <translation>Körper gerade, ganz hinab, hochdrücken</translation>
    </message>
    <message>
        <source>straight body, down and up</source>
        <translation>Körper gerade, hinab und hinauf</translation>
    </message>
    <message>
        <source>straight body, half way down</source>
        <translation>Körper gerade, halb hinab</translation>
    </message>
    <message>
        <source>straight body, lowering only</source>
        <translation>Körper gerade, nur absenken</translation>
    </message>
    <message>
        <source>straight legs to level</source>
        <translation>gestreckte Beine bis waagerecht</translation>
    </message>
    <message>
        <source>straight legs to the bar</source>
        <translation>gestreckte Beine bis zur Stange</translation>
    </message>
    <message>
        <source>thighs level</source>
        <translation>Schenkel waagerecht</translation>
    </message>
    <message>
        <source>thighs level, knees bent</source>
        <translation>Schenkel waagerecht, Knie gebeugt</translation>
    </message>
    <message>
        <source>thighs level, on the toes</source>
        <translation>Schenkel waagerecht, auf den Zehen</translation>
    </message>
    <message>
        <source>thighs level, one foot off the floor</source>
        <translation>Schenkel waagerecht, ein Fuß angehoben</translation>
    </message>
    <message>
        <source>top leg raised</source>
        <translation>oberes Bein angehoben</translation>
    </message>
    <message>
        <source>up on both legs, down on one</source>
        <translation>beidbeinig hinauf, einbeinig hinab</translation>
    </message>
    <message>
        <source>walking</source>
        <translation>im Gehen</translation>
    </message>
    <message>
        <source>with a jump, on a low bar</source>
        <translation>mit Sprung, an niedriger Stange</translation>
    </message>
    <message>
        <source>with a push of the lower foot</source>
        <translation>unterer Fuß hilft</translation>
    </message>
</context>
<context>
    <name>Exercises</name>
    <message>
        <source>band</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>bar at {where}</source>
        <translation>Stange auf {where}</translation>
    </message>
    <message>
        <source>barbell</source>
        <translation>Langhantel</translation>
    </message>
    <message>
        <source>biceps</source>
        <translation>Bizeps</translation>
    </message>
    <message>
        <source>bodyweight</source>
        <translation>Körpergewicht</translation>
    </message>
    <message>
        <source>calves</source>
        <translation>Waden</translation>
    </message>
    <message>
        <source>carry</source>
        <translation>Tragen</translation>
    </message>
    <message>
        <source>chest</source>
        <translation>Brust</translation>
    </message>
    <message>
        <source>dumbbell</source>
        <translation>Kurzhantel</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>Füße</translation>
    </message>
    <message>
        <source>feet on {where}</source>
        <translation>Füße auf {where}</translation>
    </message>
    <message>
        <source>forearms</source>
        <translation>Unterarme</translation>
    </message>
    <message>
        <source>glutes</source>
        <translation>Gesäß</translation>
    </message>
    <message>
        <source>hamstrings</source>
        <translation>Beinbeuger</translation>
    </message>
    <message>
        <source>hands on {where}</source>
        <translation>Hände auf {where}</translation>
    </message>
    <message>
        <source>hinge</source>
        <translation>Hüftbeuge</translation>
    </message>
    <message>
        <source>horizontal pull</source>
        <translation>Ziehen horizontal</translation>
    </message>
    <message>
        <source>horizontal push</source>
        <translation>Drücken horizontal</translation>
    </message>
    <message>
        <source>kettlebell</source>
        <translation>Kettlebell</translation>
    </message>
    <message>
        <source>lats</source>
        <translation>Latissimus</translation>
    </message>
    <message>
        <source>lower back</source>
        <translation>unterer Rücken</translation>
    </message>
    <message>
        <source>lunge</source>
        <translation>Ausfallschritt</translation>
    </message>
    <message>
        <source>machine</source>
        <translation>Maschine</translation>
    </message>
    <message>
        <source>quadriceps</source>
        <translation>Quadrizeps</translation>
    </message>
    <message>
        <source>shoulders</source>
        <translation>Schultern</translation>
    </message>
    <message>
        <source>single joint</source>
        <translation>eingelenkig</translation>
    </message>
    <message>
        <source>squat</source>
        <translation>Kniebeuge</translation>
    </message>
    <message>
        <source>triceps</source>
        <translation>Trizeps</translation>
    </message>
    <message>
        <source>trunk</source>
        <translation>Rumpf</translation>
    </message>
    <message>
        <source>under {where}</source>
        <translation>unter {where}</translation>
    </message>
    <message>
        <source>upper back</source>
        <translation>oberer Rücken</translation>
    </message>
    <message>
        <source>vertical pull</source>
        <translation>Ziehen vertikal</translation>
    </message>
    <message>
        <source>vertical push</source>
        <translation>Drücken vertikal</translation>
    </message>
</context>
<context>
    <name>ExportMenu</name>
    <message>
        <source>&amp;Everything, for another computer…</source>
        <translation>Alles, für einen anderen &amp;Rechner…</translation>
    </message>
    <message>
        <source>&amp;Export</source>
        <translation>&amp;Exportieren</translation>
    </message>
    <message>
        <source>All of {name}, {sessions}, saved to {path}</source>
        <translation>Alles von {name}, {sessions}, gespeichert in {path}</translation>
    </message>
    <message>
        <source>Cancelled: no file was written.</source>
        <translation>Abgebrochen: keine Datei wurde geschrieben.</translation>
    </message>
    <message>
        <source>Choose a trainee first.</source>
        <translation>Erst eine Person wählen.</translation>
    </message>
    <message>
        <source>Everything</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>For {name}: all that is kept…</source>
        <translation>Für {name}: alles, was aufbewahrt ist…</translation>
    </message>
    <message>
        <source>Nothing yet</source>
        <translation>Noch nichts</translation>
    </message>
    <message>
        <source>Program {name}…</source>
        <translation>Plan {name}…</translation>
    </message>
    <message>
        <source>Training log of {name}</source>
        <translation>Trainingsprotokoll von {name}</translation>
    </message>
    <message>
        <source>Training log of {name}…</source>
        <translation>Trainingsprotokoll von {name}…</translation>
    </message>
    <message>
        <source>Training logs</source>
        <translation>Trainingsprotokolle</translation>
    </message>
    <message>
        <source>Training logs of &amp;all…</source>
        <translation>Trainingsprotokolle von &amp;allen…</translation>
    </message>
    <message>
        <source>Where to put all that is kept of {name}</source>
        <translation>Wohin mit allem, was von {name} aufbewahrt ist</translation>
    </message>
    <message>
        <source>Writing everything…</source>
        <translation>Schreibe alles…</translation>
    </message>
    <message>
        <source>{count} lines saved to {path}</source>
        <translation>{count} Zeilen gespeichert in {path}</translation>
    </message>
    <message>
        <source>{name} saved to {path}</source>
        <translation>{name} gespeichert in {path}</translation>
    </message>
    <message>
        <source>{path} cannot be written: {why}</source>
        <translation>{path} lässt sich nicht schreiben: {why}</translation>
    </message>
    <message>
        <source>{trainees} and {sessions} saved to {path}</source>
        <translation>{trainees} und {sessions} gespeichert in {path}</translation>
    </message>
</context>
<context>
    <name>FloorsRow</name>
    <message>
        <source>Another floor for single variations</source>
        <translation>Andere Untergrenze für einzelne Varianten</translation>
    </message>
    <message>
        <source>Begins at</source>
        <translation>Beginnt bei</translation>
    </message>
    <message>
        <source>Floor at {name}</source>
        <translation>Untergrenze bei {name}</translation>
    </message>
</context>
<context>
    <name>GeneralCaution</name>
    <message>
        <source>Chest pain, fainting, sudden severe pain or numbness: stop and seek medical help.</source>
        <translation>Brustschmerz, Ohnmacht, plötzlicher starker Schmerz oder Taubheit: aufhören und ärztliche Hilfe suchen.</translation>
    </message>
    <message>
        <source>Training can hurt. Targets are for healthy people; those with a condition, pregnancy, recent injury or surgery, or a yes in a health screening need clearance from a licensed professional. Local rules and licensed practice come first.</source>
        <translation>Training kann verletzen. Vorgaben sind für Gesunde; bei Erkrankung, Schwangerschaft, frischer Verletzung oder Operation oder einem Ja in den Gesundheitsfragen braucht es die Freigabe einer zugelassenen Fachperson. Örtliche Regeln und die Heilkunde gehen vor.</translation>
    </message>
</context>
<context>
    <name>GoalBlock</name>
    <message>
        <source>Change</source>
        <translation>Ändern</translation>
    </message>
    <message>
        <source>Goals</source>
        <translation>Ziele</translation>
    </message>
    <message>
        <source>None set. A goal is drawn into the chart of its exercise, and the trend says when it comes.</source>
        <translation>Keines gesetzt. Ein Ziel wird ins Diagramm seiner Übung gezeichnet, und der Trend sagt, wann es kommt.</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
</context>
<context>
    <name>GoalForm</name>
    <message>
        <source>Another exercise, a few letters of its name</source>
        <translation>Andere Übung, ein paar Buchstaben des Namens</translation>
    </message>
    <message>
        <source>Change the goal</source>
        <translation>Ziel ändern</translation>
    </message>
    <message>
        <source>Day of the goal; empty: open</source>
        <translation>Tag des Ziels; leer: offen</translation>
    </message>
    <message>
        <source>Exercise of the goal</source>
        <translation>Übung des Ziels</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Load of the goal</source>
        <translation>Last des Ziels</translation>
    </message>
    <message>
        <source>Needed: 1 to {most} repetitions.</source>
        <translation>Nötig: 1 bis {most} Wiederholungen.</translation>
    </message>
    <message>
        <source>Needed: 1 to {most} seconds.</source>
        <translation>Nötig: 1 bis {most} Sekunden.</translation>
    </message>
    <message>
        <source>Needed: a load above 0.</source>
        <translation>Nötig: eine Last über 0.</translation>
    </message>
    <message>
        <source>Needed: a variation.</source>
        <translation>Nötig: eine Variante.</translation>
    </message>
    <message>
        <source>Needed: the exercise. Type a few letters, Return takes.</source>
        <translation>Es fehlt die Übung. Ein paar Buchstaben eingeben, Return übernimmt.</translation>
    </message>
    <message>
        <source>Note on the goal</source>
        <translation>Notiz zum Ziel</translation>
    </message>
    <message>
        <source>Repetitions of the goal</source>
        <translation>Wiederholungen des Ziels</translation>
    </message>
    <message>
        <source>Seconds of the goal</source>
        <translation>Sekunden des Ziels</translation>
    </message>
    <message>
        <source>Set the goal</source>
        <translation>Ziel setzen</translation>
    </message>
    <message>
        <source>This day is over: from {today} on, or leave it empty.</source>
        <translation>Dieser Tag ist vorbei: ab {today}, oder leer lassen.</translation>
    </message>
    <message>
        <source>Variation of the goal</source>
        <translation>Variante des Ziels</translation>
    </message>
    <message>
        <source>What the goal is measured in</source>
        <translation>Worin das Ziel gemessen wird</translation>
    </message>
    <message>
        <source>a few letters</source>
        <translation>ein paar Buchstaben</translation>
    </message>
    <message>
        <source>another exercise…</source>
        <translation>andere Übung…</translation>
    </message>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>by (empty: open)</source>
        <translation>bis (leer: offen)</translation>
    </message>
    <message>
        <source>exercise</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>for reps (empty: 1)</source>
        <translation>für Wdh (leer: 1)</translation>
    </message>
    <message>
        <source>load {unit}</source>
        <translation>Last {unit}</translation>
    </message>
    <message>
        <source>measured in</source>
        <translation>gemessen in</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>reps</source>
        <translation>Wdh</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>variation</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>which one</source>
        <translation>welche</translation>
    </message>
</context>
<context>
    <name>GoalHere</name>
    <message>
        <source>A further goal</source>
        <translation>Ein weiteres Ziel</translation>
    </message>
    <message>
        <source>Goal of {line}</source>
        <translation>Ziel von {line}</translation>
    </message>
    <message>
        <source>Goal…</source>
        <translation>Ziel…</translation>
    </message>
    <message>
        <source>Remove the goal</source>
        <translation>Ziel entfernen</translation>
    </message>
</context>
<context>
    <name>Goals</name>
    <message>
        <source>Best so far {amount}, on {day}.</source>
        <translation>Bestleistung am {day}: {amount}.</translation>
    </message>
    <message>
        <source>No estimate of the maximum: too many repetitions, or no body mass.</source>
        <translation>Keine Schätzung des Maximums: zu viele Wiederholungen oder kein Körpergewicht.</translation>
    </message>
    <message>
        <source>No forecast yet: four sessions over two weeks make a trend.</source>
        <translation>Noch keine Vorhersage: vier Einheiten über zwei Wochen ergeben einen Trend.</translation>
    </message>
    <message>
        <source>Nothing on record yet.</source>
        <translation>Noch nichts aufgezeichnet.</translation>
    </message>
    <message>
        <source>Reached on {day}.</source>
        <translation>Am {day} erreicht.</translation>
    </message>
    <message>
        <source>Remove the goal {goal}</source>
        <translation>Ziel {goal} entfernen</translation>
    </message>
    <message>
        <source>That is an estimated maximum of {load}.</source>
        <translation>Das ist ein geschätztes Maximum von {load}.</translation>
    </message>
    <message>
        <source>added load</source>
        <translation>Zusatzlast</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>repetitions</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>seconds held</source>
        <translation>gehaltene Sekunden</translation>
    </message>
    <message>
        <source>variation</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>{line}: {goal}</source>
        <translation>{line}: {goal}</translation>
    </message>
    <message>
        <source>{line}: {goal} by {day}</source>
        <translation>{line}: {goal} bis {day}</translation>
    </message>
</context>
<context>
    <name>Guide</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Guide</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Pages of the guide</source>
        <translation>Seiten des Handbuchs</translation>
    </message>
</context>
<context>
    <name>HealthFields</name>
    <message>
        <source>Answers</source>
        <translation>Antworten</translation>
    </message>
    <message>
        <source>Clearance</source>
        <translation>Freigabe</translation>
    </message>
    <message>
        <source>Clearance by</source>
        <translation>Freigabe durch</translation>
    </message>
    <message>
        <source>Consent on</source>
        <translation>Einwilligung am</translation>
    </message>
    <message>
        <source>Health screening on</source>
        <translation>Gesundheitsfragen am</translation>
    </message>
    <message>
        <source>Other activities</source>
        <translation>Andere Aktivitäten</translation>
    </message>
    <message>
        <source>a yes: needs clearance</source>
        <translation>Ja: Freigabe nötig</translation>
    </message>
    <message>
        <source>all recorded here</source>
        <translation>alle hier erfasst</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>licensed professional</source>
        <translation>zugelassene Fachperson</translation>
    </message>
    <message>
        <source>no to every question</source>
        <translation>überall nein</translation>
    </message>
    <message>
        <source>not asked yet</source>
        <translation>noch nicht gefragt</translation>
    </message>
    <message>
        <source>what was said</source>
        <translation>was gesagt wurde</translation>
    </message>
</context>
<context>
    <name>Import</name>
    <message>
        <source>1 session</source>
        <translation>1 Einheit</translation>
    </message>
    <message>
        <source>Brings {what}.</source>
        <translation>Bringt {what}.</translation>
    </message>
    <message>
        <source>Brought {what}.</source>
        <translation>Übernommen: {what}.</translation>
    </message>
    <message>
        <source>Nothing in it can be taken in yet.</source>
        <translation>Noch lässt sich nichts davon übernehmen.</translation>
    </message>
    <message>
        <source>RPE of the set</source>
        <translation>RPE des Satzes</translation>
    </message>
    <message>
        <source>Take in {sets}</source>
        <translation>{sets} übernehmen</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>eine Tabelle</translation>
    </message>
    <message>
        <source>a training log</source>
        <translation>ein Trainingsprotokoll</translation>
    </message>
    <message>
        <source>a workbook</source>
        <translation>eine Arbeitsmappe</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>Körpergewicht</translation>
    </message>
    <message>
        <source>body mass {mass}</source>
        <translation>Körpergewicht {mass}</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>zweifelhaft</translation>
    </message>
    <message>
        <source>effort of the session</source>
        <translation>Anstrengung der Einheit</translation>
    </message>
    <message>
        <source>exercise</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>goals: {count}</source>
        <translation>Ziele: {count}</translation>
    </message>
    <message>
        <source>good</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>held back</source>
        <translation>zurückgehalten</translation>
    </message>
    <message>
        <source>how many sets</source>
        <translation>wie viele Sätze</translation>
    </message>
    <message>
        <source>is there</source>
        <translation>schon da</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
    <message>
        <source>lines of exercises: {count}</source>
        <translation>Linien von Übungen: {count}</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>name of the line</source>
        <translation>Name der Linie</translation>
    </message>
    <message>
        <source>new exercises: {names}</source>
        <translation>neue Übungen: {names}</translation>
    </message>
    <message>
        <source>new on the roster: {names}</source>
        <translation>neu auf der Liste: {names}</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht gelesen</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>note on the session</source>
        <translation>Notiz zur Einheit</translation>
    </message>
    <message>
        <source>number of the set</source>
        <translation>Nummer des Satzes</translation>
    </message>
    <message>
        <source>pain, 0-10</source>
        <translation>Schmerz, 0-10</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>abgelehnt</translation>
    </message>
    <message>
        <source>reps in reserve</source>
        <translation>Wdh in Reserve</translation>
    </message>
    <message>
        <source>reps, or 3x5</source>
        <translation>Wdh, oder 3x5</translation>
    </message>
    <message>
        <source>seconds held</source>
        <translation>Sekunden gehalten</translation>
    </message>
    <message>
        <source>side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>tempo</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>trainee</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>unit of the load</source>
        <translation>Maßeinheit der Last</translation>
    </message>
    <message>
        <source>variation</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>warm-up, yes or no</source>
        <translation>Aufwärmen, ja oder nein</translation>
    </message>
    <message>
        <source>{count} body masses</source>
        <translation>{count} Körpergewichte</translation>
    </message>
    <message>
        <source>{count} lines are there already.</source>
        <translation>{count} Zeilen sind schon da.</translation>
    </message>
    <message>
        <source>{count} other activities</source>
        <translation>{count} andere Aktivitäten</translation>
    </message>
    <message>
        <source>{count} sessions</source>
        <translation>{count} Einheiten</translation>
    </message>
    <message>
        <source>{kind}, {lines} lines, {columns} columns</source>
        <translation>{kind}, {lines} Zeilen, {columns} Spalten</translation>
    </message>
    <message>
        <source>{sets} in {sessions}</source>
        <translation>{sets} in {sessions}</translation>
    </message>
    <message>
        <source>{weeks}, {phases} phases, {exercises} exercises</source>
        <translation>{weeks}, {phases} Phasen, {exercises} Übungen</translation>
    </message>
    <message>
        <source>{work} at {load}</source>
        <translation>{work} mit {load}</translation>
    </message>
</context>
<context>
    <name>ImportArea</name>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>All lines, doubtful ones, refused ones</source>
        <translation>Alle, zweifelhafte, abgelehnte Zeilen</translation>
    </message>
    <message>
        <source>All of it is in.</source>
        <translation>Alles davon ist übernommen.</translation>
    </message>
    <message>
        <source>Another file</source>
        <translation>Andere Datei</translation>
    </message>
    <message>
        <source>Cancelled: nothing was taken in.</source>
        <translation>Abgebrochen: nichts wurde übernommen.</translation>
    </message>
    <message>
        <source>Choose a file to bring in</source>
        <translation>Datei zum Importieren wählen</translation>
    </message>
    <message>
        <source>Save the lines that are not taken</source>
        <translation>Nicht übernommene Zeilen speichern</translation>
    </message>
    <message>
        <source>Tables, programs, trainees (*.csv *.tsv *.txt *.xlsx *.xlsm *.json)</source>
        <translation>Tabellen, Pläne, Personen (*.csv *.tsv *.txt *.xlsx *.xlsm *.json)</translation>
    </message>
    <message>
        <source>Take doubtful lines too</source>
        <translation>Auch zweifelhafte Zeilen nehmen</translation>
    </message>
    <message>
        <source>Take in {file}</source>
        <translation>{file} übernehmen</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Take the nearest name for all</source>
        <translation>Für alle den nächsten Namen nehmen</translation>
    </message>
    <message>
        <source>Taking it in…</source>
        <translation>Wird übernommen…</translation>
    </message>
    <message>
        <source>What is {name}?</source>
        <translation>Was ist {name}?</translation>
    </message>
    <message>
        <source>before it is taken in</source>
        <translation>bevor es übernommen wird</translation>
    </message>
    <message>
        <source>{count} lines saved to {path}, each with the reason.</source>
        <translation>{count} Zeilen gespeichert in {path}, jede mit dem Grund.</translation>
    </message>
    <message>
        <source>{count} lines were not taken. Save them as a file, mend them there, and bring that file in.</source>
        <translation>{count} Zeilen wurden nicht übernommen. Als Datei speichern, dort berichtigen und diese Datei importieren.</translation>
    </message>
    <message>
        <source>{file} is taken in</source>
        <translation>{file} ist übernommen</translation>
    </message>
    <message>
        <source>{file} is taken in. Undo takes all of it out again.</source>
        <translation>{file} ist übernommen. Rückgängig nimmt alles davon wieder heraus.</translation>
    </message>
    <message>
        <source>{name} is loaded like</source>
        <translation>{name} wird belastet wie</translation>
    </message>
    <message>
        <source>{name} not taken.csv</source>
        <translation>{name} nicht übernommen.csv</translation>
    </message>
</context>
<context>
    <name>ImportDone</name>
    <message>
        <source>Another file…</source>
        <translation>Andere Datei…</translation>
    </message>
    <message>
        <source>Save the lines that were not taken…</source>
        <translation>Nicht übernommene Zeilen speichern…</translation>
    </message>
    <message>
        <source>To the desk</source>
        <translation>Zur Übersicht</translation>
    </message>
</context>
<context>
    <name>ImportOptions</name>
    <message>
        <source>All lines are of</source>
        <translation>Alle Zeilen sind von</translation>
    </message>
    <message>
        <source>Blank date or exercise</source>
        <translation>Datum oder Übung leer</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Daten</translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation>Dezimalzeichen</translation>
    </message>
    <message>
        <source>Keep this mapping as</source>
        <translation>Zuordnung behalten als</translation>
    </message>
    <message>
        <source>Loads without a unit</source>
        <translation>Lasten ohne Maßeinheit</translation>
    </message>
    <message>
        <source>Mapping</source>
        <translation>Zuordnung</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Tabellenblatt</translation>
    </message>
    <message>
        <source>as guessed</source>
        <translation>wie erraten</translation>
    </message>
    <message>
        <source>as the line above</source>
        <translation>wie die Zeile darüber</translation>
    </message>
    <message>
        <source>as written</source>
        <translation>wie geschrieben</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>day first</source>
        <translation>Tag zuerst</translation>
    </message>
    <message>
        <source>either</source>
        <translation>beides</translation>
    </message>
    <message>
        <source>is missing</source>
        <translation>fehlt</translation>
    </message>
    <message>
        <source>kg or lb?</source>
        <translation>kg oder lb?</translation>
    </message>
    <message>
        <source>month first</source>
        <translation>Monat zuerst</translation>
    </message>
    <message>
        <source>not kept</source>
        <translation>nicht behalten</translation>
    </message>
    <message>
        <source>point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>abgelehnt</translation>
    </message>
    <message>
        <source>who?</source>
        <translation>wer?</translation>
    </message>
</context>
<context>
    <name>ImportPage</name>
    <message>
        <source>? Doubtful {count}</source>
        <translation>? Zweifelhaft {count}</translation>
    </message>
    <message>
        <source>A few letters of its name</source>
        <translation>Ein paar Buchstaben des Namens</translation>
    </message>
    <message>
        <source>All {count}</source>
        <translation>Alle {count}</translation>
    </message>
    <message>
        <source>Another file…</source>
        <translation>Andere Datei…</translation>
    </message>
    <message>
        <source>Hand back {count}…</source>
        <translation>{count} zurückgeben…</translation>
    </message>
    <message>
        <source>How far the reading is</source>
        <translation>Wie weit gelesen ist</translation>
    </message>
    <message>
        <source>Line {number}, {fate}: {text}</source>
        <translation>Zeile {number}, {fate}: {text}</translation>
    </message>
    <message>
        <source>Lines shown</source>
        <translation>Gezeigte Zeilen</translation>
    </message>
    <message>
        <source>No line is like that.</source>
        <translation>Keine Zeile ist so.</translation>
    </message>
    <message>
        <source>Save the lines that are not taken as a file</source>
        <translation>Nicht übernommene Zeilen als Datei speichern</translation>
    </message>
    <message>
        <source>Stop reading</source>
        <translation>Lesen beenden</translation>
    </message>
    <message>
        <source>Take doubtful lines too</source>
        <translation>Auch zweifelhafte Zeilen nehmen</translation>
    </message>
    <message>
        <source>× Refused {count}</source>
        <translation>× Abgelehnt {count}</translation>
    </message>
</context>
<context>
    <name>ImportTable</name>
    <message>
        <source>Lines of the file</source>
        <translation>Zeilen der Datei</translation>
    </message>
</context>
<context>
    <name>ImportWelcome</name>
    <message>
        <source>A file dropped on the window opens here too. Nothing is saved until you say so, and one step of Undo takes all of it out again.</source>
        <translation>Eine Datei, die auf dem Fenster abgelegt wird, öffnet sich auch hier. Gespeichert wird erst auf Wunsch, und ein Schritt Rückgängig nimmt alles wieder heraus.</translation>
    </message>
    <message>
        <source>A training log, a program, trainees</source>
        <translation>Ein Trainingsprotokoll, ein Plan, Personen</translation>
    </message>
    <message>
        <source>Any table of training</source>
        <translation>Jede Tabelle mit Training</translation>
    </message>
    <message>
        <source>Bring in what was written elsewhere</source>
        <translation>Importieren, was anderswo steht</translation>
    </message>
    <message>
        <source>CSV, or a workbook (.xlsx). You see what each column was taken for, change it, and read every line before anything is taken in. Sets may stand one in a line, side by side, or together in a cell: 3x5, 5/5/4, BW+10.</source>
        <translation>CSV oder eine Arbeitsmappe (.xlsx). Zu sehen ist, wofür jede Spalte gehalten wird; das lässt sich ändern, und jede Zeile ist lesbar, bevor etwas übernommen wird. Sätze dürfen einzeln in Zeilen, nebeneinander oder zusammen in einer Zelle stehen: 3x5, 5/5/4, BW+10.</translation>
    </message>
    <message>
        <source>Choose a file…</source>
        <translation>Datei wählen…</translation>
    </message>
    <message>
        <source>Drop it anywhere</source>
        <translation>Irgendwo ablegen</translation>
    </message>
    <message>
        <source>Files that this program wrote are known at once. A log brings nothing twice, so a longer one can follow.</source>
        <translation>Dateien aus Rungwise werden sofort erkannt. Ein Protokoll bringt nichts doppelt, also darf ein längeres folgen.</translation>
    </message>
    <message>
        <source>Mappings kept: {names}. They are offered for files with the same heading.</source>
        <translation>Behaltene Zuordnungen: {names}. Sie werden für Dateien mit derselben Kopfzeile angeboten.</translation>
    </message>
</context>
<context>
    <name>KeyboardMap</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
</context>
<context>
    <name>Limits</name>
    <message>
        <source>A red flag was noted on {day}: stop, seek medical help, and ask for nothing until a licensed professional&apos;s clearance is recorded.</source>
        <translation>Am {day} wurde ein Warnzeichen notiert: aufhören, ärztliche Hilfe suchen und nichts vorgeben, bis die Freigabe einer zugelassenen Fachperson festgehalten ist.</translation>
    </message>
    <message>
        <source>Born in {birth_year} and perhaps under 18: 1-3 sets of 6-15, on 2-3 days that do not follow each other, form before load, no maximum tests, and supervised.</source>
        <translation>Geboren {birth_year} und vielleicht unter 18: 1-3 Sätze mit 6-15, an 2-3 Tagen, die nicht aufeinander folgen, Technik vor Last, keine Maximaltests und unter Aufsicht.</translation>
    </message>
    <message>
        <source>Born in {birth_year}, so 65 or older: 1-3 sets of 8-12 at 60-80 % of the maximum, on 2-3 days that do not follow each other, and balance work on 3 days a week.</source>
        <translation>Geboren {birth_year}, also 65 oder älter: 1-3 Sätze mit 8-12 bei 60-80 % des Maximums, an 2-3 Tagen, die nicht aufeinander folgen, und Gleichgewichtstraining an 3 Tagen pro Woche.</translation>
    </message>
    <message>
        <source>Hard sessions of the pattern {pattern} on {first} and {second} leave no full day between them.</source>
        <translation>Harte Einheiten mit dem Muster {pattern} am {first} und {second} lassen keinen vollen Tag dazwischen.</translation>
    </message>
    <message>
        <source>More than one thing grows at once: {variables}.</source>
        <translation>Mehr als eine Größe steigt zugleich: {variables}.</translation>
    </message>
    <message>
        <source>No health screening is recorded: ask the health questions before the first session.</source>
        <translation>Keine Gesundheitsfragen festgehalten: vor der ersten Einheit stellen.</translation>
    </message>
    <message>
        <source>Not trained for {days} days, since {last}: start with what was done last, or less.</source>
        <translation>Seit {days} Tagen nicht trainiert, seit {last}: mit dem zuletzt Gemachten beginnen, oder weniger.</translation>
    </message>
    <message>
        <source>Other activities are not recorded, so the training load shown is incomplete.</source>
        <translation>Andere Aktivitäten sind nicht aufgezeichnet, also ist die gezeigte Trainingsbelastung unvollständig.</translation>
    </message>
    <message>
        <source>Pain of {pain} out of 10 was noted on {day} (sessions with pain in a row: {times}): nothing is asked until you choose a lighter load, a substitute or a licensed professional&apos;s clearance.</source>
        <translation>Am {day} wurde Schmerz {pain} von 10 notiert (Einheiten mit Schmerz in Folge: {times}): keine Vorgabe, bis eine leichtere Last, ein Ersatz oder die Freigabe einer zugelassenen Fachperson gewählt ist.</translation>
    </message>
    <message>
        <source>Pain of {pain} out of 10 was noted on {day}: nothing grows until a session without it.</source>
        <translation>Am {day} wurde Schmerz {pain} von 10 notiert: nichts steigt bis zu einer Einheit ohne Schmerz.</translation>
    </message>
    <message>
        <source>Several signs at once speak for a deload: {signals}.</source>
        <translation>Mehrere Zeichen zugleich sprechen für einen Deload: {signals}.</translation>
    </message>
    <message>
        <source>The days of the week to {week_ends} were nearly alike (monotony {monotony}): let hard and easy days differ.</source>
        <translation>Die Tage der Woche bis {week_ends} waren fast gleich (Monotonie {monotony}): harte und leichte Tage unterscheiden.</translation>
    </message>
    <message>
        <source>The health screening of {day} was not clear: nothing is asked until a licensed professional&apos;s clearance is recorded with name and date.</source>
        <translation>Die Gesundheitsfragen vom {day} ergaben ein Ja: keine Vorgabe, bis die Freigabe einer zugelassenen Fachperson mit Name und Datum festgehalten ist.</translation>
    </message>
    <message>
        <source>The load rises from {before_g} to {after_g} at once, {over} more.</source>
        <translation>Die Last steigt auf einmal von {before_g} auf {after_g}, {over} mehr.</translation>
    </message>
    <message>
        <source>The next step that the equipment allows is {over} harder: {reps_needed} repetitions first.</source>
        <translation>Der nächste Schritt, den die Ausstattung erlaubt, ist {over} schwerer: erst {reps_needed} Wiederholungen.</translation>
    </message>
    <message>
        <source>The rule is complete: add a variable or raise a ceiling, or the same is asked again and again.</source>
        <translation>Die Regel ist am Ende: eine Größe dazunehmen oder eine Obergrenze anheben, sonst wird immer dasselbe vorgegeben.</translation>
    </message>
    <message>
        <source>There has been no deload for {weeks} weeks, since {since}.</source>
        <translation>Seit {since}, also seit {weeks} Wochen, gab es keinen Deload.</translation>
    </message>
    <message>
        <source>This has probably stopped growing ({probability} likely): change a variable or plan a deload.</source>
        <translation>Hier steigt wahrscheinlich nichts mehr ({probability} wahrscheinlich): eine Größe ändern oder einen Deload planen.</translation>
    </message>
    <message>
        <source>Trained less than twice a week: {muscles}.</source>
        <translation>Weniger als zweimal pro Woche trainiert: {muscles}.</translation>
    </message>
</context>
<context>
    <name>LineChoice</name>
    <message>
        <source>Line</source>
        <translation>Linie</translation>
    </message>
    <message>
        <source>not yet</source>
        <translation>noch nicht</translation>
    </message>
</context>
<context>
    <name>LineModel</name>
    <message>
        <source>Is</source>
        <translation>Ist</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Nr</translation>
    </message>
    <message>
        <source>Read as</source>
        <translation>Gelesen als</translation>
    </message>
</context>
<context>
    <name>LinePlot</name>
    <message>
        <source>body mass {mass} {unit}</source>
        <translation>Körpergewicht {mass} {unit}</translation>
    </message>
    <message>
        <source>goal {what}</source>
        <translation>Ziel {what}</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
</context>
<context>
    <name>Load</name>
    <message>
        <source>Away the whole week.</source>
        <translation>Die ganze Woche abwesend.</translation>
    </message>
    <message>
        <source>Effort of each session or activity (0-10) times its minutes, summed.</source>
        <translation>Anstrengung jeder Einheit oder Aktivität (0-10) mal ihre Minuten, summiert.</translation>
    </message>
    <message>
        <source>Exponentially weighted averages of the daily load: the short one above the long one says that the load rises.</source>
        <translation>Exponentiell gewichtete Mittel der täglichen Belastung: liegt das kurze über dem langen, steigt die Belastung.</translation>
    </message>
    <message>
        <source>Hard sets</source>
        <translation>Harte Sätze</translation>
    </message>
    <message>
        <source>Incomplete: not every activity of {name} is recorded.</source>
        <translation>Unvollständig: nicht jede Aktivität von {name} ist aufgezeichnet.</translation>
    </message>
    <message>
        <source>Incomplete: one session has no effort or no minutes.</source>
        <translation>Unvollständig: eine Einheit hat keine Anstrengung oder keine Minuten.</translation>
    </message>
    <message>
        <source>Incomplete: {count} sessions have no effort or no minutes.</source>
        <translation>Unvollständig: {count} Einheiten haben keine Anstrengung oder keine Minuten.</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Belastung</translation>
    </message>
    <message>
        <source>Load, monotony and strain: Foster 1998, Med Sci Sports Exerc 30(7):1164-1168; days without an entry count 0; which standard deviation is meant is not said there. Averages over 7 and 28 days, exponentially weighted: Williams 2017, Br J Sports Med 51(3):209-210, DOI 10.1136/bjsports-2016-096589. No ratio of the two is shown: as a sign of injury risk it is criticised (Impellizzeri 2021, Sports Med, DOI 10.1007/s40279-020-01378-6).</source>
        <translation>Belastung, Monotonie und Beanspruchung: Foster 1998, Med Sci Sports Exerc 30(7):1164-1168; Tage ohne Eintrag zählen 0; welche Standardabweichung gemeint ist, steht dort nicht. Mittel über 7 und 28 Tage, exponentiell gewichtet: Williams 2017, Br J Sports Med 51(3):209-210, DOI 10.1136/bjsports-2016-096589. Kein Verhältnis der beiden wird gezeigt: als Zeichen für Verletzungsrisiko ist es umstritten (Impellizzeri 2021, Sports Med, DOI 10.1007/s40279-020-01378-6).</translation>
    </message>
    <message>
        <source>Marks of hard sets a week by muscle, as information, not an order:</source>
        <translation>Marken für harte Sätze pro Woche und Muskel, zur Kenntnis, nicht als Anweisung:</translation>
    </message>
    <message>
        <source>Monotony</source>
        <translation>Monotonie</translation>
    </message>
    <message>
        <source>Nothing is recorded this week yet.</source>
        <translation>In dieser Woche ist noch nichts aufgezeichnet.</translation>
    </message>
    <message>
        <source>Nothing was recorded in this week.</source>
        <translation>In dieser Woche wurde nichts aufgezeichnet.</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Sessions done, of the training days that the program names.</source>
        <translation>Gemachte Einheiten, von den Trainingstagen im Plan.</translation>
    </message>
    <message>
        <source>Strain</source>
        <translation>Beanspruchung</translation>
    </message>
    <message>
        <source>The load so far is {load}.</source>
        <translation>Die Belastung ist bisher {load}.</translation>
    </message>
    <message>
        <source>The load so far is {load}; the weeks before had {usual} on average.</source>
        <translation>Die Belastung ist bisher {load}; die Wochen davor hatten im Schnitt {usual}.</translation>
    </message>
    <message>
        <source>The mean of the seven daily loads over {deviation}: the more alike the days, the higher.</source>
        <translation>Das Mittel der sieben Tagesbelastungen durch {deviation}: je ähnlicher die Tage, desto höher.</translation>
    </message>
    <message>
        <source>The week&apos;s load times its monotony.</source>
        <translation>Die Belastung der Woche mal ihre Monotonie.</translation>
    </message>
    <message>
        <source>The week&apos;s load was {load}, as in the weeks before.</source>
        <translation>Die Belastung der Woche war {load}, wie in den Wochen davor.</translation>
    </message>
    <message>
        <source>The week&apos;s load was {load}, {by} less than the weeks before ({usual}).</source>
        <translation>Die Belastung der Woche war {load}, {by} weniger als in den Wochen davor ({usual}).</translation>
    </message>
    <message>
        <source>The week&apos;s load was {load}, {by} more than the weeks before ({usual}).</source>
        <translation>Die Belastung der Woche war {load}, {by} mehr als in den Wochen davor ({usual}).</translation>
    </message>
    <message>
        <source>The week&apos;s load was {load}.</source>
        <translation>Die Belastung der Woche war {load}.</translation>
    </message>
    <message>
        <source>This week</source>
        <translation>Diese Woche</translation>
    </message>
    <message>
        <source>Trend</source>
        <translation>Trend</translation>
    </message>
    <message>
        <source>Week from {day}</source>
        <translation>Woche ab {day}</translation>
    </message>
    <message>
        <source>Wellness, 1 bad to 5 good: {told}</source>
        <translation>Befinden, 1 schlecht bis 5 gut: {told}</translation>
    </message>
    <message>
        <source>Working sets done, of those asked or planned.</source>
        <translation>Gemachte Arbeitssätze, von den vorgegebenen oder geplanten.</translation>
    </message>
    <message>
        <source>a day, over 7 / over 28 days</source>
        <translation>pro Tag, über 7 / über 28 Tage</translation>
    </message>
    <message>
        <source>a session without effort or minutes</source>
        <translation>eine Einheit ohne Anstrengung oder Minuten</translation>
    </message>
    <message>
        <source>at least {load}</source>
        <translation>mindestens {load}</translation>
    </message>
    <message>
        <source>away</source>
        <translation>abwesend</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>Deload</translation>
    </message>
    <message>
        <source>done of planned</source>
        <translation>gemacht von geplant</translation>
    </message>
    <message>
        <source>effort × minutes, added up</source>
        <translation>Anstrengung × Minuten, summiert</translation>
    </message>
    <message>
        <source>in part</source>
        <translation>zum Teil</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Belastung</translation>
    </message>
    <message>
        <source>load × monotony</source>
        <translation>Belastung × Monotonie</translation>
    </message>
    <message>
        <source>mean of the days over their deviation</source>
        <translation>Mittel der Tage durch ihre Abweichung</translation>
    </message>
    <message>
        <source>monotony</source>
        <translation>Monotonie</translation>
    </message>
    <message>
        <source>motivation</source>
        <translation>Motivation</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>sessions</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>sleep</source>
        <translation>Schlaf</translation>
    </message>
    <message>
        <source>soreness</source>
        <translation>Muskelkater</translation>
    </message>
    <message>
        <source>strain</source>
        <translation>Beanspr.</translation>
    </message>
    <message>
        <source>stress</source>
        <translation>Stress</translation>
    </message>
    <message>
        <source>the population&apos;s standard deviation</source>
        <translation>die Standardabweichung der Grundgesamtheit</translation>
    </message>
    <message>
        <source>the sample&apos;s standard deviation</source>
        <translation>die Standardabweichung der Stichprobe</translation>
    </message>
    <message>
        <source>{count} earlier</source>
        <translation>{count} davor</translation>
    </message>
    <message>
        <source>{done} of {planned}</source>
        <translation>{done} von {planned}</translation>
    </message>
    <message>
        <source>{load} in other activities</source>
        <translation>{load} in anderen Aktivitäten</translation>
    </message>
    <message>
        <source>{load} in sessions</source>
        <translation>{load} in Einheiten</translation>
    </message>
    <message>
        <source>{name} on {day}</source>
        <translation>{name} am {day}</translation>
    </message>
</context>
<context>
    <name>LoadArea</name>
    <message>
        <source>A week earlier</source>
        <translation>Eine Woche früher</translation>
    </message>
    <message>
        <source>A week earlier or later</source>
        <translation>Eine Woche früher oder später</translation>
    </message>
    <message>
        <source>A week later</source>
        <translation>Eine Woche später</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Hinweise</translation>
    </message>
    <message>
        <source>Deload</source>
        <translation>Deload</translation>
    </message>
    <message>
        <source>Plan it</source>
        <translation>Planen</translation>
    </message>
    <message>
        <source>The deload earlier or later</source>
        <translation>Den Deload früher oder später</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Woche</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Was gezeigt wird</translation>
    </message>
</context>
<context>
    <name>LoadSteps</name>
    <message>
        <source>A heavier load</source>
        <translation>Schwerere Last</translation>
    </message>
    <message>
        <source>A lighter load</source>
        <translation>Leichtere Last</translation>
    </message>
</context>
<context>
    <name>LoadWeek</name>
    <message>
        <source>All activities of {name} are recorded here</source>
        <translation>Alle Aktivitäten von {name} sind hier aufgezeichnet</translation>
    </message>
    <message>
        <source>Choose a program</source>
        <translation>Plan wählen</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Effort (0-10) times minutes of each session and of every other activity makes the training load. A week of it shows whether days differ; four weeks show what is usual.</source>
        <translation>Anstrengung (0-10) mal Minuten jeder Einheit und jeder anderen Aktivität ergibt die Trainingsbelastung. Eine Woche davon zeigt, ob sich die Tage unterscheiden; vier Wochen zeigen, was üblich ist.</translation>
    </message>
    <message>
        <source>Hard sets by muscle</source>
        <translation>Harte Sätze nach Muskel</translation>
    </message>
    <message>
        <source>Load by day</source>
        <translation>Belastung nach Tagen</translation>
    </message>
    <message>
        <source>Load of {name}</source>
        <translation>Belastung von {name}</translation>
    </message>
    <message>
        <source>Numbers…</source>
        <translation>Zahlen…</translation>
    </message>
    <message>
        <source>Other activities</source>
        <translation>Andere Aktivitäten</translation>
    </message>
    <message>
        <source>Recorded on {day}, which is not among these weeks</source>
        <translation>Aufgezeichnet am {day}, der nicht in diesen Wochen liegt</translation>
    </message>
    <message>
        <source>Remove {activity}</source>
        <translation>{activity} entfernen</translation>
    </message>
    <message>
        <source>Sixteen weeks</source>
        <translation>Sechzehn Wochen</translation>
    </message>
    <message>
        <source>Sources</source>
        <translation>Quellen</translation>
    </message>
    <message>
        <source>Type the first session</source>
        <translation>Erste Einheit eingeben</translation>
    </message>
    <message>
        <source>Weeks and muscles</source>
        <translation>Wochen und Muskeln</translation>
    </message>
    <message>
        <source>What is recorded of {name}</source>
        <translation>Was von {name} aufgezeichnet ist</translation>
    </message>
    <message>
        <source>average over 7 days</source>
        <translation>Mittel über 7 Tage</translation>
    </message>
    <message>
        <source>dotted: published marks</source>
        <translation>gepunktet: Studienmarken</translation>
    </message>
    <message>
        <source>load by day; hard sets by muscle</source>
        <translation>Belastung nach Tagen; harte Sätze nach Muskel</translation>
    </message>
    <message>
        <source>of this week; they count as load</source>
        <translation>dieser Woche; sie zählen als Belastung</translation>
    </message>
    <message>
        <source>other activities</source>
        <translation>andere Aktivitäten</translation>
    </message>
    <message>
        <source>over 28 days</source>
        <translation>über 28 Tage</translation>
    </message>
    <message>
        <source>sessions</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>{name} needs a program first.</source>
        <translation>{name} braucht zuerst einen Plan.</translation>
    </message>
</context>
<context>
    <name>LoadWeeks</name>
    <message>
        <source>Left and right choose a week.</source>
        <translation>Links und Rechts wählen eine Woche.</translation>
    </message>
    <message>
        <source>{week}. {sentence} {figures}</source>
        <translation>{week}. {sentence} {figures}</translation>
    </message>
</context>
<context>
    <name>LockPanel</name>
    <message>
        <source>Go on</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Gesperrt</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
    <message>
        <source>That is not the passphrase.</source>
        <translation>Das ist nicht die Passphrase.</translation>
    </message>
    <message>
        <source>The window is only hidden: the data file has no passphrase, so anybody can go on.</source>
        <translation>Das Fenster ist nur verdeckt: die Datendatei hat keine Passphrase, also kann jeder fortfahren.</translation>
    </message>
    <message>
        <source>Type the passphrase to go on.</source>
        <translation>Passphrase eingeben, um fortzufahren.</translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message>
        <source>Choose a trainee first.</source>
        <translation>Erst eine Person wählen.</translation>
    </message>
    <message>
        <source>Here is what was being typed when the program ended.</source>
        <translation>Hier ist, was gerade eingegeben wurde, als Rungwise endete.</translation>
    </message>
    <message>
        <source>On this screen</source>
        <translation>In diesem Bereich</translation>
    </message>
    <message>
        <source>Rungwise</source>
        <translation>Rungwise</translation>
    </message>
</context>
<context>
    <name>MarkedPanel</name>
    <message>
        <source>1 slot marked</source>
        <translation>1 Platz markiert</translation>
    </message>
    <message>
        <source>Copy</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>In reserve</source>
        <translation>In Reserve</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Reserve of all marked</source>
        <translation>Reserve aller markierten</translation>
    </message>
    <message>
        <source>Rest</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Rest of all marked</source>
        <translation>Pause aller markierten</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <source>Sets of all marked</source>
        <translation>Sätze aller markierten</translation>
    </message>
    <message>
        <source>Unmark</source>
        <translation>Markierung aufheben</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>sets</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <source>{count} slots marked</source>
        <translation>{count} Plätze markiert</translation>
    </message>
    <message>
        <source>…</source>
        <translation>…</translation>
    </message>
</context>
<context>
    <name>Marks</name>
    <message>
        <source>size, the highest band studied</source>
        <translation>Muskelaufbau, das höchste untersuchte Band</translation>
    </message>
    <message>
        <source>strength and size, at least</source>
        <translation>Kraft und Muskelaufbau, mindestens</translation>
    </message>
</context>
<context>
    <name>MassFields</name>
    <message>
        <source>Body mass {unit}</source>
        <translation>Körpergewicht {unit}</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>none entered yet</source>
        <translation>noch keines eingetragen</translation>
    </message>
</context>
<context>
    <name>Menus</name>
    <message>
        <source>&amp;Add…</source>
        <translation>&amp;Hinzufügen…</translation>
    </message>
    <message>
        <source>&amp;Back up now</source>
        <translation>&amp;Jetzt sichern</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>Farb&amp;schema</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Find…</source>
        <translation>&amp;Suchen…</translation>
    </message>
    <message>
        <source>&amp;Guide</source>
        <translation>&amp;Handbuch</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation>&amp;Importieren…</translation>
    </message>
    <message>
        <source>&amp;Keyboard map</source>
        <translation>&amp;Tastenübersicht</translation>
    </message>
    <message>
        <source>&amp;Larger text</source>
        <translation>&amp;Größere Schrift</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Lock</source>
        <translation>&amp;Sperren</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Nächste</translation>
    </message>
    <message>
        <source>&amp;Open data file…</source>
        <translation>Datendatei ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>&amp;Passphrase…</source>
        <translation>&amp;Passphrase…</translation>
    </message>
    <message>
        <source>&amp;Previous</source>
        <translation>&amp;Vorige</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>Wieder&amp;herstellen</translation>
    </message>
    <message>
        <source>&amp;Take over everything…</source>
        <translation>Alles überneh&amp;men…</translation>
    </message>
    <message>
        <source>&amp;Trainee</source>
        <translation>&amp;Person</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Usual text</source>
        <translation>Norma&amp;le Schrift</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>After {count} minutes</source>
        <translation>Nach {count} Minuten</translation>
    </message>
    <message>
        <source>Alt and the letter</source>
        <translation>Alt und der Buchstabe</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das S&amp;ystem</translation>
    </message>
    <message>
        <source>Bac&amp;kups…</source>
        <translation>Sicherun&amp;gen…</translation>
    </message>
    <message>
        <source>E&amp;rase for good…</source>
        <translation>Endgültig &amp;löschen…</translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation>Überall</translation>
    </message>
    <message>
        <source>Gi&amp;ve them their data…</source>
        <translation>&amp;Daten mitgeben…</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>Sprac&amp;he</translation>
    </message>
    <message>
        <source>Lock &amp;when idle</source>
        <translation>Sperren nach &amp;Leerlauf</translation>
    </message>
    <message>
        <source>Menus</source>
        <translation>Menüs</translation>
    </message>
    <message>
        <source>Never</source>
        <translation>Nie</translation>
    </message>
    <message>
        <source>Next field</source>
        <translation>Nächstes Feld</translation>
    </message>
    <message>
        <source>Next part of the screen</source>
        <translation>Nächster Teil des Bereichs</translation>
    </message>
    <message>
        <source>Note &amp;days away…</source>
        <translation>Ab&amp;wesenheit notieren…</translation>
    </message>
    <message>
        <source>Open the &amp;demo scenario</source>
        <translation>&amp;Demo-Szenario öffnen</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Return</translation>
    </message>
    <message>
        <source>S&amp;maller text</source>
        <translation>&amp;Kleinere Schrift</translation>
    </message>
    <message>
        <source>Set a &amp;goal…</source>
        <translation>&amp;Ziel setzen…</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
</context>
<context>
    <name>MoreDaysBlock</name>
    <message>
        <source>Train it on {weekday} too</source>
        <translation>Auch am {weekday} trainieren</translation>
    </message>
    <message>
        <source>{names} train by this program too: it changes for all of them.</source>
        <translation>Nach diesem Plan trainieren auch {names}: er ändert sich für alle.</translation>
    </message>
    <message>
        <source>{names} trains by this program too: it changes for both.</source>
        <translation>Nach diesem Plan trainiert auch {names}: er ändert sich für beide.</translation>
    </message>
</context>
<context>
    <name>MuscleBars</name>
    <message>
        <source>Hard sets a week: {sets}</source>
        <translation>Harte Sätze pro Woche: {sets}</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>under {count}</source>
        <translation>unter {count}</translation>
    </message>
    <message>
        <source>{done} of {planned}</source>
        <translation>{done} von {planned}</translation>
    </message>
</context>
<context>
    <name>NameHeader</name>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
</context>
<context>
    <name>NameQuestions</name>
    <message>
        <source>1 name is not known here. Its lines wait until you say what it means.</source>
        <translation>1 Name ist hier nicht bekannt. Seine Zeilen warten, bis klar ist, was er bedeutet.</translation>
    </message>
    <message>
        <source>All of them are told. They are kept with the mapping.</source>
        <translation>Alle sind geklärt. Sie bleiben bei der Zuordnung.</translation>
    </message>
    <message>
        <source>Names</source>
        <translation>Namen</translation>
    </message>
    <message>
        <source>Nearest for all</source>
        <translation>Nächster für alle</translation>
    </message>
    <message>
        <source>{count} names are not known here. Their lines wait until you say what they mean.</source>
        <translation>{count} Namen sind hier nicht bekannt. Ihre Zeilen warten, bis klar ist, was sie bedeuten.</translation>
    </message>
</context>
<context>
    <name>NextTime</name>
    <message>
        <source>Next time</source>
        <translation>Nächstes Mal</translation>
    </message>
    <message>
        <source>No exercise was recorded.</source>
        <translation>Keine Übung wurde aufgezeichnet.</translation>
    </message>
</context>
<context>
    <name>NoProgress</name>
    <message>
        <source>Choose a program</source>
        <translation>Plan wählen</translation>
    </message>
    <message>
        <source>Every session typed becomes a point. Four of them, two weeks apart or more, make a trend: how much a week, how sure that is, and when a goal comes.</source>
        <translation>Jede eingegebene Einheit wird ein Punkt. Vier davon, über zwei Wochen oder mehr, ergeben einen Trend: wie viel pro Woche, wie sicher das ist und wann ein Ziel kommt.</translation>
    </message>
    <message>
        <source>Nothing to show of {name} yet</source>
        <translation>Von {name} gibt es noch nichts zu zeigen</translation>
    </message>
    <message>
        <source>Type the first session</source>
        <translation>Erste Einheit eingeben</translation>
    </message>
    <message>
        <source>{name} needs a program first.</source>
        <translation>{name} braucht zuerst einen Plan.</translation>
    </message>
</context>
<context>
    <name>NoSheet</name>
    <message>
        <source>Next day of training: {day}</source>
        <translation>Nächster Trainingstag: {day}</translation>
    </message>
    <message>
        <source>No sheet for this day</source>
        <translation>Kein Blatt für diesen Tag</translation>
    </message>
    <message>
        <source>Open the program</source>
        <translation>Plan öffnen</translation>
    </message>
</context>
<context>
    <name>Notes</name>
    <message>
        <source>1 question is open.</source>
        <translation>1 Frage ist offen.</translation>
    </message>
    <message>
        <source>Exercises that wait for an answer are left out: {count}.</source>
        <translation>Übungen, die auf eine Antwort warten, bleiben weg: {count}.</translation>
    </message>
    <message>
        <source>How many were left in reserve: “{said}”?</source>
        <translation>Wie viele blieben in Reserve: „{said}“?</translation>
    </message>
    <message>
        <source>How many, or how long: “{said}”?</source>
        <translation>Wie viele, oder wie lange: „{said}“?</translation>
    </message>
    <message>
        <source>How was it set up: “{said}”?</source>
        <translation>Wie war es aufgebaut: „{said}“?</translation>
    </message>
    <message>
        <source>In which unit is “{said}”?</source>
        <translation>In welcher Maßeinheit ist „{said}“?</translation>
    </message>
    <message>
        <source>Is the comma in “{said}” a decimal mark?</source>
        <translation>Ist das Komma in „{said}“ ein Dezimalzeichen?</translation>
    </message>
    <message>
        <source>Is “{said}” a load or an effort?</source>
        <translation>Ist „{said}“ eine Last oder eine Anstrengung?</translation>
    </message>
    <message>
        <source>On record already: {count}.</source>
        <translation>Schon aufgezeichnet: {count}.</translation>
    </message>
    <message>
        <source>Parts not read: {count}.</source>
        <translation>Nicht gelesene Teile: {count}.</translation>
    </message>
    <message>
        <source>Save {count} sessions</source>
        <translation>{count} Einheiten speichern</translation>
    </message>
    <message>
        <source>Say it in the text at the left, or leave it out.</source>
        <translation>Im Text links sagen oder weglassen.</translation>
    </message>
    <message>
        <source>Take over</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Two sets, or left and right: “{said}”?</source>
        <translation>Zwei Sätze, oder links und rechts: „{said}“?</translation>
    </message>
    <message>
        <source>What do the numbers mean in “{said}”?</source>
        <translation>Was bedeuten die Zahlen in „{said}“?</translation>
    </message>
    <message>
        <source>What does “{said}” belong to?</source>
        <translation>Wozu gehört „{said}“?</translation>
    </message>
    <message>
        <source>What is meant again by “{said}”?</source>
        <translation>Was ist mit „{said}“ noch einmal gemeint?</translation>
    </message>
    <message>
        <source>Where was the pain: “{said}”?</source>
        <translation>Wo war der Schmerz: „{said}“?</translation>
    </message>
    <message>
        <source>Which day is “{said}”?</source>
        <translation>Welcher Tag ist „{said}“?</translation>
    </message>
    <message>
        <source>Which exercise is “{said}”?</source>
        <translation>Welche Übung ist „{said}“?</translation>
    </message>
    <message>
        <source>Which exercise?</source>
        <translation>Welche Übung?</translation>
    </message>
    <message>
        <source>Which line of it is meant by “{said}”?</source>
        <translation>Welche Linie davon ist mit „{said}“ gemeint?</translation>
    </message>
    <message>
        <source>Which number is which in “{said}”?</source>
        <translation>Welche Zahl ist welche in „{said}“?</translation>
    </message>
    <message>
        <source>Which number of “{said}” was done?</source>
        <translation>Welche Zahl in „{said}“ wurde gemacht?</translation>
    </message>
    <message>
        <source>With which load: “{said}”?</source>
        <translation>Mit welcher Last: „{said}“?</translation>
    </message>
    <message>
        <source>Write the load into the text, or leave it out.</source>
        <translation>Die Last in den Text schreiben oder weglassen.</translation>
    </message>
    <message>
        <source>another exercise…</source>
        <translation>andere Übung…</translation>
    </message>
    <message>
        <source>as it was read</source>
        <translation>wie gelesen</translation>
    </message>
    <message>
        <source>bar at {height}</source>
        <translation>Stange auf {height}</translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation>zweifelhaft</translation>
    </message>
    <message>
        <source>feet on {height}</source>
        <translation>Füße auf {height}</translation>
    </message>
    <message>
        <source>hands on {height}</source>
        <translation>Hände auf {height}</translation>
    </message>
    <message>
        <source>kept as a note</source>
        <translation>als Notiz behalten</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>weglassen</translation>
    </message>
    <message>
        <source>none of them</source>
        <translation>keine davon</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nicht gelesen</translation>
    </message>
    <message>
        <source>read as a mark</source>
        <translation>als Zeichen gelesen</translation>
    </message>
    <message>
        <source>read as an exercise</source>
        <translation>als Übung gelesen</translation>
    </message>
    <message>
        <source>read as the day</source>
        <translation>als Tag gelesen</translation>
    </message>
    <message>
        <source>read as what was done</source>
        <translation>als Gemachtes gelesen</translation>
    </message>
    <message>
        <source>the line without a name</source>
        <translation>die Linie ohne Namen</translation>
    </message>
    <message>
        <source>warm-up {work}</source>
        <translation>Aufwärmen {work}</translation>
    </message>
    <message>
        <source>{count} in reserve</source>
        <translation>{count} in Reserve</translation>
    </message>
    <message>
        <source>{count} left</source>
        <translation>{count} links</translation>
    </message>
    <message>
        <source>{count} questions are open.</source>
        <translation>{count} Fragen sind offen.</translation>
    </message>
    <message>
        <source>{count} right</source>
        <translation>{count} rechts</translation>
    </message>
    <message>
        <source>{sets} on {days}.</source>
        <translation>Am {days}: {sets}.</translation>
    </message>
    <message>
        <source>{work} at ?</source>
        <translation>{work} mit ?</translation>
    </message>
    <message>
        <source>{work} at {load}</source>
        <translation>{work} mit {load}</translation>
    </message>
</context>
<context>
    <name>NotesArea</name>
    <message>
        <source>A few letters of its name</source>
        <translation>Ein paar Buchstaben des Namens</translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation>Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Back to the text</source>
        <translation>Zurück zum Text</translation>
    </message>
    <message>
        <source>Look it over, and save it with Ctrl+Return.</source>
        <translation>Durchsehen und mit Strg+Return speichern.</translation>
    </message>
    <message>
        <source>Next question, the one before</source>
        <translation>Nächste Frage, vorige Frage</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Open a text</source>
        <translation>Text öffnen</translation>
    </message>
    <message>
        <source>Open notes</source>
        <translation>Notizen öffnen</translation>
    </message>
    <message>
        <source>Question {number} of {count}</source>
        <translation>Frage {number} von {count}</translation>
    </message>
    <message>
        <source>Saved {sets} on {count} days.</source>
        <translation>{sets} an {count} Tagen gespeichert.</translation>
    </message>
    <message>
        <source>Take an answer</source>
        <translation>Eine Antwort nehmen</translation>
    </message>
    <message>
        <source>Take over notes</source>
        <translation>Notizen übernehmen</translation>
    </message>
    <message>
        <source>Take over what is certain</source>
        <translation>Sicheres übernehmen</translation>
    </message>
    <message>
        <source>Text (*.txt *.md)</source>
        <translation>Text (*.txt *.md)</translation>
    </message>
    <message>
        <source>The session of {day} is being typed: save or clear it first.</source>
        <translation>Die Einheit vom {day} ist gerade in Arbeit: erst speichern oder leeren.</translation>
    </message>
    <message>
        <source>Which exercise is meant?</source>
        <translation>Welche Übung ist gemeint?</translation>
    </message>
    <message>
        <source>here: {word}</source>
        <translation>hier: {word}</translation>
    </message>
</context>
<context>
    <name>NotesPage</name>
    <message>
        <source>Day of what stands under no date</source>
        <translation>Tag für alles, was unter keinem Datum steht</translation>
    </message>
    <message>
        <source>Open a text…</source>
        <translation>Text öffnen…</translation>
    </message>
    <message>
        <source>Paste what was written, as it was written:

Mon 23 Nov
squat 3x5 60kg
bench 45 8,8,7 rpe 8
push ups 12/10/9</source>
        <translation>Einfügen, was notiert wurde, so wie es notiert wurde:

Mo 23. Nov.
Kniebeuge 3x5 60kg
Bankdrücken 45 8,8,7 rpe 8
Liegestütze 12/10/9</translation>
    </message>
    <message>
        <source>What is read appears here, day by day, before anything is saved. What is doubtful is asked; words that nothing came of stay visible in the text.</source>
        <translation>Was gelesen wird, erscheint hier Tag für Tag, bevor etwas gespeichert ist. Zweifelhaftes wird gefragt; Wörter, aus denen nichts wurde, bleiben im Text sichtbar.</translation>
    </message>
    <message>
        <source>underlined: read   waved: doubtful   dashed: not read</source>
        <translation>unterstrichen: gelesen   gewellt: zweifelhaft   gestrichelt: nicht gelesen</translation>
    </message>
</context>
<context>
    <name>NotesProposal</name>
    <message>
        <source>= on record already</source>
        <translation>= schon aufgezeichnet</translation>
    </message>
    <message>
        <source>? doubtful</source>
        <translation>? zweifelhaft</translation>
    </message>
    <message>
        <source>? which day</source>
        <translation>? welcher Tag</translation>
    </message>
    <message>
        <source>Answer the question about {name}</source>
        <translation>Die Frage zu {name} beantworten</translation>
    </message>
    <message>
        <source>Which day is it?</source>
        <translation>Welcher Tag ist es?</translation>
    </message>
    <message>
        <source>no set</source>
        <translation>kein Satz</translation>
    </message>
    <message>
        <source>{name}: choose another exercise</source>
        <translation>{name}: andere Übung wählen</translation>
    </message>
    <message>
        <source>– left out</source>
        <translation>– ausgelassen</translation>
    </message>
    <message>
        <source>✓ certain</source>
        <translation>✓ sicher</translation>
    </message>
</context>
<context>
    <name>NotesQuestions</name>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorige</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Nächste</translation>
    </message>
</context>
<context>
    <name>NotesText</name>
    <message>
        <source>Notes of the trainee</source>
        <translation>Notizen der Person</translation>
    </message>
</context>
<context>
    <name>Notice</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Copy the text</source>
        <translation>Text kopieren</translation>
    </message>
    <message>
        <source>Details</source>
        <translation>Einzelheiten</translation>
    </message>
    <message>
        <source>Rungwise</source>
        <translation>Rungwise</translation>
    </message>
</context>
<context>
    <name>Numbers</name>
    <message>
        <source>A whole number.</source>
        <translation>Eine ganze Zahl.</translation>
    </message>
    <message>
        <source>Allowed: {least} to {most}.</source>
        <translation>Erlaubt: {least} bis {most}.</translation>
    </message>
    <message>
        <source>At most {decimals} places after the decimal mark.</source>
        <translation>Höchstens {decimals} Stellen nach dem Dezimalzeichen.</translation>
    </message>
    <message>
        <source>At most {most} {unit}.</source>
        <translation>Höchstens {most} {unit}.</translation>
    </message>
    <message>
        <source>Needed: {least} to {most}.</source>
        <translation>Nötig: {least} bis {most}.</translation>
    </message>
    <message>
        <source>No separators between thousands: write 1250.5 or 1250,5.</source>
        <translation>Keine Tausendertrennung: 1250.5 oder 1250,5 schreiben.</translation>
    </message>
    <message>
        <source>Not a number: digits, and one decimal point or comma.</source>
        <translation>Keine Zahl: Ziffern, und ein Dezimalpunkt oder -komma.</translation>
    </message>
    <message>
        <source>The other decimal mark.</source>
        <translation>Das andere Dezimalzeichen.</translation>
    </message>
    <message>
        <source>Thousands or a decimal? Write it without the mark, or with two places after it.</source>
        <translation>Tausender oder Dezimalstelle? Ohne das Zeichen schreiben oder mit zwei Stellen danach.</translation>
    </message>
    <message>
        <source>{value}: is this meant?</source>
        <translation>{value}: ist das gemeint?</translation>
    </message>
</context>
<context>
    <name>NumbersSaving</name>
    <message>
        <source>All of it (spreadsheet)…</source>
        <translation>Alles (Tabellendatei)…</translation>
    </message>
    <message>
        <source>Not saved: {why}</source>
        <translation>Nicht gespeichert: {why}</translation>
    </message>
    <message>
        <source>Save the numbers</source>
        <translation>Zahlen speichern</translation>
    </message>
    <message>
        <source>Saved to {path}</source>
        <translation>Gespeichert in {path}</translation>
    </message>
    <message>
        <source>{what} (CSV)…</source>
        <translation>{what} (CSV)…</translation>
    </message>
</context>
<context>
    <name>OutcomeBlock</name>
    <message>
        <source>Set otherwise</source>
        <translation>Anders setzen</translation>
    </message>
    <message>
        <source>a test</source>
        <translation>ein Test</translation>
    </message>
    <message>
        <source>{exercise}: set the next target otherwise</source>
        <translation>{exercise}: die nächste Vorgabe anders setzen</translation>
    </message>
</context>
<context>
    <name>OutcomeFoot</name>
    <message>
        <source>Back to the session</source>
        <translation>Zurück zur Einheit</translation>
    </message>
    <message>
        <source>Next trainee</source>
        <translation>Nächste Person</translation>
    </message>
    <message>
        <source>Next: {name}</source>
        <translation>Nächste: {name}</translation>
    </message>
    <message>
        <source>Remove the session</source>
        <translation>Einheit entfernen</translation>
    </message>
    <message>
        <source>To the desk</source>
        <translation>Zur Übersicht</translation>
    </message>
    <message>
        <source>Undo saving</source>
        <translation>Speichern zurücknehmen</translation>
    </message>
</context>
<context>
    <name>Outcomes</name>
    <message>
        <source>as asked</source>
        <translation>wie vorgegeben</translation>
    </message>
    <message>
        <source>done, not counted</source>
        <translation>gemacht, nicht gezählt</translation>
    </message>
    <message>
        <source>fewer sets, each as asked</source>
        <translation>weniger Sätze, jeder wie vorgegeben</translation>
    </message>
    <message>
        <source>less than asked</source>
        <translation>weniger als vorgegeben</translation>
    </message>
    <message>
        <source>less than asked, but more than last time</source>
        <translation>weniger als vorgegeben, aber mehr als letztes Mal</translation>
    </message>
    <message>
        <source>more than asked</source>
        <translation>mehr als vorgegeben</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>nicht gemacht</translation>
    </message>
</context>
<context>
    <name>PaperOutput</name>
    <message>
        <source>Report saved to {path}</source>
        <translation>Bericht gespeichert in {path}</translation>
    </message>
    <message>
        <source>Report sent to {printer}</source>
        <translation>Bericht an {printer} gesendet</translation>
    </message>
    <message>
        <source>Save the report</source>
        <translation>Bericht speichern</translation>
    </message>
    <message>
        <source>The printer did not take the report.</source>
        <translation>Der Drucker hat den Bericht nicht angenommen.</translation>
    </message>
</context>
<context>
    <name>ParcelPage</name>
    <message>
        <source>Another file…</source>
        <translation>Andere Datei…</translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation>Übernehmen</translation>
    </message>
</context>
<context>
    <name>PassphraseChange</name>
    <message>
        <source>At least {count} letters; several words are good.</source>
        <translation>Mindestens {count} Zeichen; mehrere Wörter sind gut.</translation>
    </message>
    <message>
        <source>New passphrase</source>
        <translation>Neue Passphrase</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
    <message>
        <source>Passphrase of the data file</source>
        <translation>Passphrase der Datendatei</translation>
    </message>
    <message>
        <source>Remove the passphrase</source>
        <translation>Passphrase entfernen</translation>
    </message>
    <message>
        <source>Set the passphrase</source>
        <translation>Passphrase setzen</translation>
    </message>
    <message>
        <source>The same again</source>
        <translation>Dieselbe noch einmal</translation>
    </message>
    <message>
        <source>The two are not the same.</source>
        <translation>Die beiden sind nicht gleich.</translation>
    </message>
    <message>
        <source>With a passphrase the data file and all its backups are encrypted; they are written anew now. Nobody can open them without it, and nobody can help if it is forgotten: write it down and keep it where the file is not.</source>
        <translation>Mit einer Passphrase sind die Datendatei und alle ihre Sicherungen verschlüsselt; sie werden jetzt neu geschrieben. Niemand kann sie ohne sie öffnen, und niemand kann helfen, wenn sie vergessen ist: aufschreiben und dort aufbewahren, wo die Datei nicht ist.</translation>
    </message>
</context>
<context>
    <name>PassphraseQuestion</name>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation>Passphrase</translation>
    </message>
</context>
<context>
    <name>Past</name>
    <message>
        <source>Add an exercise</source>
        <translation>Übung hinzufügen</translation>
    </message>
    <message>
        <source>Best of {line}: {change}</source>
        <translation>Bestleistung {line}: {change}</translation>
    </message>
    <message>
        <source>Both stand on {days}: their sets come together there.</source>
        <translation>Beide stehen am {days}: dort kommen ihre Sätze zusammen.</translation>
    </message>
    <message>
        <source>Change them all</source>
        <translation>Alle ändern</translation>
    </message>
    <message>
        <source>Corrected</source>
        <translation>Berichtigt</translation>
    </message>
    <message>
        <source>Entered</source>
        <translation>Eingetragen</translation>
    </message>
    <message>
        <source>Every set of both is kept.</source>
        <translation>Jeder Satz von beiden bleibt.</translation>
    </message>
    <message>
        <source>Join the session of {other} into that of {day}</source>
        <translation>Einheit vom {other} mit der vom {day} verbinden</translation>
    </message>
    <message>
        <source>Join them</source>
        <translation>Verbinden</translation>
    </message>
    <message>
        <source>Move it</source>
        <translation>Verschieben</translation>
    </message>
    <message>
        <source>Move the session of {day} to {other}</source>
        <translation>Einheit vom {day} auf {other} verschieben</translation>
    </message>
    <message>
        <source>New caution: {text}</source>
        <translation>Neuer Hinweis: {text}</translation>
    </message>
    <message>
        <source>No longer a caution: {text}</source>
        <translation>Kein Hinweis mehr: {text}</translation>
    </message>
    <message>
        <source>No target, best or caution changes: what is asked rests on the same work.</source>
        <translation>Keine Vorgabe, keine Bestleistung und kein Hinweis ändert sich: die Vorgabe beruht auf derselben Arbeit.</translation>
    </message>
    <message>
        <source>One is counted and the other is held: choose one measured alike.</source>
        <translation>Die eine wird gezählt, die andere gehalten: bitte eine wählen, die gleich gemessen wird.</translation>
    </message>
    <message>
        <source>Remove it</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove the session of {day}</source>
        <translation>Einheit vom {day} entfernen</translation>
    </message>
    <message>
        <source>Some sets were done with help: choose a bodyweight exercise.</source>
        <translation>Einige Sätze hatten Hilfe: bitte eine Übung mit Körpergewicht wählen.</translation>
    </message>
    <message>
        <source>That is the exercise they are recorded as.</source>
        <translation>Als diese Übung sind sie aufgezeichnet.</translation>
    </message>
    <message>
        <source>Variations of {count} sets are unknown to the other exercise and go.</source>
        <translation>Varianten von {count} Sätzen kennt die andere Übung nicht; sie entfallen.</translation>
    </message>
    <message>
        <source>at {load}</source>
        <translation>mit {load}</translation>
    </message>
    <message>
        <source>blank</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>day {change}</source>
        <translation>Tag {change}</translation>
    </message>
    <message>
        <source>effort {change}</source>
        <translation>Anstrengung {change}</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>minutes {change}</source>
        <translation>Minuten {change}</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation>noch nicht gespeichert</translation>
    </message>
    <message>
        <source>note {change}</source>
        <translation>Notiz {change}</translation>
    </message>
    <message>
        <source>pain {pain}</source>
        <translation>Schmerz {pain}</translation>
    </message>
    <message>
        <source>red flag {change}</source>
        <translation>Warnzeichen {change}</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>wellness {change}</source>
        <translation>Befinden {change}</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>{amounts} s</source>
        <translation>{amounts} s</translation>
    </message>
    <message>
        <source>{count} sessions of {line} become {other}</source>
        <translation>{count} Einheiten von {line} werden {other}</translation>
    </message>
    <message>
        <source>{done} {when}</source>
        <translation>{done} {when}</translation>
    </message>
    <message>
        <source>{line}, {day}: {change}</source>
        <translation>{line}, {day}: {change}</translation>
    </message>
    <message>
        <source>{line}: the session of {day} counts differently</source>
        <translation>{line}: die Einheit vom {day} zählt anders</translation>
    </message>
    <message>
        <source>{line}: {count} sessions count differently, the first on {day}</source>
        <translation>{line}: {count} Einheiten zählen anders, die erste am {day}</translation>
    </message>
    <message>
        <source>{name} added</source>
        <translation>{name} hinzugefügt</translation>
    </message>
    <message>
        <source>{name} taken out</source>
        <translation>{name} herausgenommen</translation>
    </message>
    <message>
        <source>{name}, note {change}</source>
        <translation>{name}, Notiz {change}</translation>
    </message>
    <message>
        <source>{name}, number of sets {change}</source>
        <translation>{name}, Zahl der Sätze {change}</translation>
    </message>
    <message>
        <source>{name}, set {number}: {change}</source>
        <translation>{name}, Satz {number}: {change}</translation>
    </message>
</context>
<context>
    <name>PastArea</name>
    <message>
        <source>A few letters, or the arrow keys</source>
        <translation>Ein paar Buchstaben oder die Pfeiltasten</translation>
    </message>
    <message>
        <source>Another exercise, in all sessions</source>
        <translation>Andere Übung, in allen Einheiten</translation>
    </message>
    <message>
        <source>Done. Undo takes it back.</source>
        <translation>Erledigt. Rückgängig nimmt es zurück.</translation>
    </message>
    <message>
        <source>Exercise, day or note</source>
        <translation>Übung, Tag oder Notiz</translation>
    </message>
    <message>
        <source>Join</source>
        <translation>Verbinden</translation>
    </message>
    <message>
        <source>Join with another session</source>
        <translation>Mit einer anderen Einheit verbinden</translation>
    </message>
    <message>
        <source>Join with which session? It goes into the one chosen in the list.</source>
        <translation>Mit welcher Einheit verbinden? Sie geht in die gewählte über.</translation>
    </message>
    <message>
        <source>Move to another date</source>
        <translation>Auf ein anderes Datum verschieben</translation>
    </message>
    <message>
        <source>No other session lies within three days.</source>
        <translation>Keine andere Einheit liegt innerhalb von drei Tagen.</translation>
    </message>
    <message>
        <source>No session holds all of these words. Esc shows them all.</source>
        <translation>Keine Einheit enthält alle diese Wörter. Esc zeigt alle.</translation>
    </message>
    <message>
        <source>Nothing is on record yet. Sessions typed in the session form, read from notes or imported stand here, the latest first.</source>
        <translation>Noch ist nichts aufgezeichnet. Eingegebene, aus Notizen gelesene oder importierte Einheiten stehen hier, die neueste zuerst.</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Open the session</source>
        <translation>Einheit öffnen</translation>
    </message>
    <message>
        <source>Other date</source>
        <translation>Anderes Datum</translation>
    </message>
    <message>
        <source>Other exercise</source>
        <translation>Andere Übung</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove the session</source>
        <translation>Einheit entfernen</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>Search the sessions</source>
        <translation>Einheiten durchsuchen</translation>
    </message>
    <message>
        <source>Sessions on record</source>
        <translation>Aufgezeichnete Einheiten</translation>
    </message>
    <message>
        <source>Which exercise was another one, in all sessions?</source>
        <translation>Welche Übung war eine andere, in allen Einheiten?</translation>
    </message>
    <message>
        <source>{count} of {all} sessions</source>
        <translation>{count} von {all} Einheiten</translation>
    </message>
    <message>
        <source>{count} sessions</source>
        <translation>{count} Einheiten</translation>
    </message>
    <message>
        <source>{line}: which exercise was it?</source>
        <translation>{line}: welche Übung war es?</translation>
    </message>
</context>
<context>
    <name>PastDate</name>
    <message>
        <source>Leave</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>On which day was it done?</source>
        <translation>An welchem Tag wurde es gemacht?</translation>
    </message>
    <message>
        <source>The day on which it was done</source>
        <translation>Der Tag, an dem es gemacht wurde</translation>
    </message>
    <message>
        <source>This day has not come yet: today at the latest.</source>
        <translation>Dieser Tag kommt erst noch: spätestens heute.</translation>
    </message>
</context>
<context>
    <name>PastModel</name>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was gemacht wurde</translation>
    </message>
</context>
<context>
    <name>PastTable</name>
    <message>
        <source>Sessions on record</source>
        <translation>Aufgezeichnete Einheiten</translation>
    </message>
</context>
<context>
    <name>PersonFields</name>
    <message>
        <source>Days to train</source>
        <translation>Trainingstage</translation>
    </message>
    <message>
        <source>Experience</source>
        <translation>Erfahrung</translation>
    </message>
    <message>
        <source>Minutes a session</source>
        <translation>Minuten je Einheit</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Sex, for body segments only</source>
        <translation>Geschlecht, für Segmente</translation>
    </message>
    <message>
        <source>Stature cm</source>
        <translation>Größe cm</translation>
    </message>
    <message>
        <source>Unit of loads</source>
        <translation>Lasten in</translation>
    </message>
    <message>
        <source>What for</source>
        <translation>Wofür</translation>
    </message>
    <message>
        <source>What to avoid</source>
        <translation>Was zu meiden ist</translation>
    </message>
    <message>
        <source>Year of birth</source>
        <translation>Geburtsjahr</translation>
    </message>
    <message>
        <source>advanced</source>
        <translation>Erfahren</translation>
    </message>
    <message>
        <source>female</source>
        <translation>weiblich</translation>
    </message>
    <message>
        <source>intermediate</source>
        <translation>Mittelstufe</translation>
    </message>
    <message>
        <source>male</source>
        <translation>männlich</translation>
    </message>
    <message>
        <source>novice</source>
        <translation>Einstieg</translation>
    </message>
</context>
<context>
    <name>PhaseLine</name>
    <message>
        <source>Left and right choose a phase, Return edits it, Alt with them moves it.</source>
        <translation>Links und Rechts wählen eine Phase, Return bearbeitet sie, Alt dazu verschiebt sie.</translation>
    </message>
    <message>
        <source>Phase {place} of {count}: {name}, {weeks}</source>
        <translation>Phase {place} von {count}: {name}, {weeks}</translation>
    </message>
    <message>
        <source>week {number}</source>
        <translation>Woche {number}</translation>
    </message>
</context>
<context>
    <name>PhasePanel</name>
    <message>
        <source>Add a deload week after it</source>
        <translation>Deload-Woche danach hinzufügen</translation>
    </message>
    <message>
        <source>Add a phase after it</source>
        <translation>Phase danach hinzufügen</translation>
    </message>
    <message>
        <source>Add a test week after it</source>
        <translation>Testwoche danach hinzufügen</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Name of the phase</source>
        <translation>Name der Phase</translation>
    </message>
    <message>
        <source>Phase</source>
        <translation>Phase</translation>
    </message>
    <message>
        <source>Rename the phase</source>
        <translation>Phase umbenennen</translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation>Wochen</translation>
    </message>
    <message>
        <source>Weeks of the phase</source>
        <translation>Wochen der Phase</translation>
    </message>
    <message>
        <source>What the phase is for</source>
        <translation>Wofür die Phase ist</translation>
    </message>
</context>
<context>
    <name>Phases</name>
    <message>
        <source>assess</source>
        <translation>Test</translation>
    </message>
    <message>
        <source>build</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>Deload</translation>
    </message>
</context>
<context>
    <name>PlacePanel</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Verdoppeln</translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation>Früher</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
</context>
<context>
    <name>PlainCautions</name>
    <message>
        <source>A warning sign was noted on {day}: no training until a licensed professional allows it. In doubt seek medical help at once.</source>
        <translation>Am {day} wurde ein Warnzeichen notiert: kein Training, bis eine zugelassene Fachperson es erlaubt. Im Zweifel sofort ärztliche Hilfe suchen.</translation>
    </message>
    <message>
        <source>All steps planned for it are done: something new comes next.</source>
        <translation>Alle geplanten Schritte sind getan: als Nächstes kommt etwas Neues.</translation>
    </message>
    <message>
        <source>For young people: good form before load, days of rest between, no tests of the maximum, and always supervised.</source>
        <translation>Für junge Leute: gute Technik vor Last, Ruhetage dazwischen, keine Tests des Maximums und immer unter Aufsicht.</translation>
    </message>
    <message>
        <source>From 65 on: moderate loads, days of rest between, and exercises for balance on 3 days a week.</source>
        <translation>Ab 65: mäßige Lasten, Ruhetage dazwischen und Übungen für das Gleichgewicht an 3 Tagen pro Woche.</translation>
    </message>
    <message>
        <source>No full day of rest lies between {first} and {second} for the same movement ({pattern}).</source>
        <translation>Zwischen {first} und {second} liegt kein voller Ruhetag für dieselbe Bewegung ({pattern}).</translation>
    </message>
    <message>
        <source>Not trained since {last}: it begins again with what was done last, or less.</source>
        <translation>Seit {last} nicht trainiert: es beginnt wieder mit dem zuletzt Gemachten, oder weniger.</translation>
    </message>
    <message>
        <source>Other activities are not written down, so more was done than shown.</source>
        <translation>Andere Aktivitäten sind nicht aufgeschrieben, also wurde mehr gemacht als gezeigt.</translation>
    </message>
    <message>
        <source>Pain of {pain} out of 10 was noted on {day}: nothing gets harder until a session without it.</source>
        <translation>Am {day} wurde Schmerz {pain} von 10 notiert: nichts wird schwerer bis zu einer Einheit ohne Schmerz.</translation>
    </message>
    <message>
        <source>Pain of {pain} out of 10 was noted on {day}: this exercise rests until it is decided how to go on.</source>
        <translation>Am {day} wurde Schmerz {pain} von 10 notiert: diese Übung ruht, bis entschieden ist, wie es weitergeht.</translation>
    </message>
    <message>
        <source>Several signs speak for an easier week: {signals}.</source>
        <translation>Mehrere Zeichen sprechen für eine leichtere Woche: {signals}.</translation>
    </message>
    <message>
        <source>Several things got harder at once: {variables}.</source>
        <translation>Mehreres wurde zugleich schwerer: {variables}.</translation>
    </message>
    <message>
        <source>Some muscles are trained less than twice a week: {muscles}.</source>
        <translation>Einige Muskeln werden weniger als zweimal pro Woche trainiert: {muscles}.</translation>
    </message>
    <message>
        <source>The days of the week to {week_ends} were nearly alike: hard and easy days should differ more.</source>
        <translation>Die Tage der Woche bis {week_ends} waren fast gleich: harte und leichte Tage sollten sich mehr unterscheiden.</translation>
    </message>
    <message>
        <source>The health questions have not been asked yet.</source>
        <translation>Die Gesundheitsfragen sind noch nicht gestellt.</translation>
    </message>
    <message>
        <source>The health questions of {day} call for advice: no training until a licensed professional allows it.</source>
        <translation>Die Gesundheitsfragen vom {day} verlangen Rat: kein Training, bis eine zugelassene Fachperson es erlaubt.</translation>
    </message>
    <message>
        <source>The load went up by {over} at once.</source>
        <translation>Die Last stieg auf einmal um {over}.</translation>
    </message>
    <message>
        <source>The next step that can be loaded is {over} harder, so more repetitions come first.</source>
        <translation>Der nächste Schritt, der sich laden lässt, ist {over} schwerer, also kommen erst mehr Wiederholungen.</translation>
    </message>
    <message>
        <source>There has been no easier week since {since}.</source>
        <translation>Seit {since} gab es keine leichtere Woche.</translation>
    </message>
    <message>
        <source>This has probably stopped getting better for now, so something will change.</source>
        <translation>Hier geht es wahrscheinlich zurzeit nicht weiter, also wird etwas geändert.</translation>
    </message>
</context>
<context>
    <name>PositionEditor</name>
    <message>
        <source>Leave</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>Seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>Set it so</source>
        <translation>So setzen</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <source>Variation</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>Why the position is set</source>
        <translation>Warum die Vorgabe gesetzt wird</translation>
    </message>
    <message>
        <source>Why? It is kept with the line</source>
        <translation>Warum? Es bleibt bei der Linie</translation>
    </message>
</context>
<context>
    <name>ProgramActs</name>
    <message>
        <source>Add a deload week</source>
        <translation>Deload-Woche hinzufügen</translation>
    </message>
    <message>
        <source>Add a phase</source>
        <translation>Phase hinzufügen</translation>
    </message>
    <message>
        <source>Add a training day</source>
        <translation>Trainingstag hinzufügen</translation>
    </message>
    <message>
        <source>Day {number}</source>
        <translation>Tag {number}</translation>
    </message>
    <message>
        <source>Deload</source>
        <translation>Deload</translation>
    </message>
    <message>
        <source>Duplicate {day}</source>
        <translation>{day} verdoppeln</translation>
    </message>
    <message>
        <source>Duplicate {phase}</source>
        <translation>{phase} verdoppeln</translation>
    </message>
    <message>
        <source>Mend the balance</source>
        <translation>Ausgleich herstellen</translation>
    </message>
    <message>
        <source>Move {day}</source>
        <translation>{day} verschieben</translation>
    </message>
    <message>
        <source>Move {phase}</source>
        <translation>{phase} verschieben</translation>
    </message>
    <message>
        <source>Next phase</source>
        <translation>Nächste Phase</translation>
    </message>
    <message>
        <source>Put a test week first</source>
        <translation>Testwoche voranstellen</translation>
    </message>
    <message>
        <source>Re-test</source>
        <translation>Neuer Test</translation>
    </message>
    <message>
        <source>Remove {day}</source>
        <translation>{day} entfernen</translation>
    </message>
    <message>
        <source>Remove {phase}</source>
        <translation>{phase} entfernen</translation>
    </message>
    <message>
        <source>Rename {name}</source>
        <translation>{name} umbenennen</translation>
    </message>
    <message>
        <source>Test again</source>
        <translation>Noch einmal testen</translation>
    </message>
    <message>
        <source>Test week</source>
        <translation>Testwoche</translation>
    </message>
    <message>
        <source>add</source>
        <translation>hinzufügen</translation>
    </message>
    <message>
        <source>duplicate</source>
        <translation>verdoppeln</translation>
    </message>
    <message>
        <source>move</source>
        <translation>verschieben</translation>
    </message>
    <message>
        <source>remove</source>
        <translation>entfernen</translation>
    </message>
    <message>
        <source>{exercise}: {what}</source>
        <translation>{exercise}: {what}</translation>
    </message>
    <message>
        <source>{old} becomes {new}</source>
        <translation>{old} wird {new}</translation>
    </message>
    <message>
        <source>{old} becomes {new} everywhere</source>
        <translation>{old} wird überall {new}</translation>
    </message>
    <message>
        <source>{weekday} is taken: choose another one, or move that day first.</source>
        <translation>{weekday} ist belegt: einen anderen wählen oder erst jenen Tag verschieben.</translation>
    </message>
</context>
<context>
    <name>ProgramClipboard</name>
    <message>
        <source>Nothing was copied yet.</source>
        <translation>Noch nichts wurde kopiert.</translation>
    </message>
    <message>
        <source>Paste {what}</source>
        <translation>{what} einfügen</translation>
    </message>
    <message>
        <source>{what} copied; Ctrl+V pastes it.</source>
        <translation>{what} kopiert; Strg+V fügt ein.</translation>
    </message>
</context>
<context>
    <name>ProgramEditor</name>
    <message>
        <source>Build</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Draft {name}</source>
        <translation>{name} entwerfen</translation>
    </message>
    <message>
        <source>Duplicate {name}</source>
        <translation>{name} verdoppeln</translation>
    </message>
    <message>
        <source>Load {name}</source>
        <translation>{name} laden</translation>
    </message>
    <message>
        <source>New program</source>
        <translation>Neuer Plan</translation>
    </message>
    <message>
        <source>Remove {name}</source>
        <translation>{name} entfernen</translation>
    </message>
    <message>
        <source>{name} is removed; Undo brings it back.</source>
        <translation>{name} ist entfernt; Rückgängig holt ihn zurück.</translation>
    </message>
</context>
<context>
    <name>ProgramHead</name>
    <message>
        <source>End</source>
        <translation>Beenden</translation>
    </message>
    <message>
        <source>End for {name}</source>
        <translation>Für {name} beenden</translation>
    </message>
    <message>
        <source>Give to {name}</source>
        <translation>{name} zuweisen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Name of the program</source>
        <translation>Name des Plans</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Programs</source>
        <translation>Pläne</translation>
    </message>
    <message>
        <source>Put a test week first</source>
        <translation>Testwoche voranstellen</translation>
    </message>
    <message>
        <source>Replace</source>
        <translation>Ersetzen</translation>
    </message>
    <message>
        <source>Test again at the end</source>
        <translation>Am Ende noch einmal testen</translation>
    </message>
    <message>
        <source>Weeks ahead</source>
        <translation>Wochen voraus</translation>
    </message>
    <message>
        <source>{name} started on {day}</source>
        <translation>{name} hat am {day} begonnen</translation>
    </message>
    <message>
        <source>{name} starts on {day}</source>
        <translation>{name} beginnt am {day}</translation>
    </message>
</context>
<context>
    <name>ProgramKeys</name>
    <message>
        <source>Add a training day</source>
        <translation>Trainingstag hinzufügen</translation>
    </message>
    <message>
        <source>All programs</source>
        <translation>Alle Pläne</translation>
    </message>
    <message>
        <source>Copy what is marked, a slot, a day or a phase</source>
        <translation>Markiertes, Platz, Tag oder Phase kopieren</translation>
    </message>
    <message>
        <source>Draft a program</source>
        <translation>Plan entwerfen</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Verdoppeln</translation>
    </message>
    <message>
        <source>Earlier or later</source>
        <translation>Früher oder später</translation>
    </message>
    <message>
        <source>Edit a slot, a day or a phase</source>
        <translation>Platz, Tag oder Phase bearbeiten</translation>
    </message>
    <message>
        <source>Exchange the exercise</source>
        <translation>Übung tauschen</translation>
    </message>
    <message>
        <source>Give it to the trainee</source>
        <translation>Der Person zuweisen</translation>
    </message>
    <message>
        <source>Mark a slot, or all of a day</source>
        <translation>Einen Platz oder alle eines Tages markieren</translation>
    </message>
    <message>
        <source>Mark everything</source>
        <translation>Alles markieren</translation>
    </message>
    <message>
        <source>Mark this and the next</source>
        <translation>Diesen und den nächsten markieren</translation>
    </message>
    <message>
        <source>New program</source>
        <translation>Neuer Plan</translation>
    </message>
    <message>
        <source>Paste, also into another program</source>
        <translation>Einfügen, auch in einen anderen Plan</translation>
    </message>
    <message>
        <source>Print or save as PDF</source>
        <translation>Drucken oder als PDF speichern</translation>
    </message>
    <message>
        <source>Put a test week first, or test again</source>
        <translation>Testwoche voranstellen oder noch einmal testen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Replace an exercise everywhere</source>
        <translation>Eine Übung überall ersetzen</translation>
    </message>
    <message>
        <source>Weeks ahead</source>
        <translation>Wochen voraus</translation>
    </message>
</context>
<context>
    <name>ProgramMarks</name>
    <message>
        <source>Remove {count} slots</source>
        <translation>{count} Plätze entfernen</translation>
    </message>
    <message>
        <source>{count} slots: {what}</source>
        <translation>{count} Plätze: {what}</translation>
    </message>
</context>
<context>
    <name>ProgramPage</name>
    <message>
        <source>Add a training day</source>
        <translation>Trainingstag hinzufügen</translation>
    </message>
</context>
<context>
    <name>ProgramPrint</name>
    <message>
        <source>Hard sets in week {number}: {sets}.</source>
        <translation>Harte Sätze in Woche {number}: {sets}.</translation>
    </message>
    <message>
        <source>from the starts of its slots</source>
        <translation>von den Starts seiner Plätze aus</translation>
    </message>
    <message>
        <source>from {day}</source>
        <translation>ab {day}</translation>
    </message>
    <message>
        <source>targets if all goes as asked</source>
        <translation>Vorgaben, wenn alles wie vorgegeben läuft</translation>
    </message>
    <message>
        <source>week {first}</source>
        <translation>Woche {first}</translation>
    </message>
    <message>
        <source>weeks {first} to {last}</source>
        <translation>Wochen {first} bis {last}</translation>
    </message>
    <message>
        <source>{name} · about {time}</source>
        <translation>{name} · etwa {time}</translation>
    </message>
</context>
<context>
    <name>ProgramPrinting</name>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Program saved to {path}</source>
        <translation>Plan gespeichert in {path}</translation>
    </message>
    <message>
        <source>Program sent to {printer}</source>
        <translation>Plan an {printer} gesendet</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF speichern…</translation>
    </message>
    <message>
        <source>Save the program</source>
        <translation>Plan speichern</translation>
    </message>
    <message>
        <source>The printer did not take the program.</source>
        <translation>Der Drucker hat den Plan nicht angenommen.</translation>
    </message>
</context>
<context>
    <name>ProgramShelf</name>
    <message>
        <source>A program holds phases of some weeks, a phase its training days, a day its exercises. Each exercise gets a rule that says what grows next. Begin with a blank one, have one drafted from days, minutes and equipment, or load one that ships; each becomes yours to edit.</source>
        <translation>Ein Plan hat Phasen von einigen Wochen, eine Phase ihre Trainingstage, ein Tag seine Übungen. Jede Übung bekommt eine Regel, die sagt, was als Nächstes steigt. Leer beginnen, aus Tagen, Minuten und Ausstattung entwerfen lassen oder einen mitgelieferten laden; jeder lässt sich frei bearbeiten.</translation>
    </message>
    <message>
        <source>Draft a program</source>
        <translation>Plan entwerfen</translation>
    </message>
    <message>
        <source>Load a starter program</source>
        <translation>Startplan laden</translation>
    </message>
    <message>
        <source>Load the starter program {name}</source>
        <translation>Startplan {name} laden</translation>
    </message>
    <message>
        <source>New program</source>
        <translation>Neuer Plan</translation>
    </message>
    <message>
        <source>No program yet</source>
        <translation>Noch kein Plan</translation>
    </message>
    <message>
        <source>Programs</source>
        <translation>Pläne</translation>
    </message>
    <message>
        <source>it becomes an ordinary program to edit</source>
        <translation>er wird ein gewöhnlicher Plan zum Bearbeiten</translation>
    </message>
</context>
<context>
    <name>Programs</name>
    <message>
        <source>1 day a week</source>
        <translation>1 Tag pro Woche</translation>
    </message>
    <message>
        <source>{count} days a week</source>
        <translation>{count} Tage pro Woche</translation>
    </message>
</context>
<context>
    <name>Progress</name>
    <message>
        <source>% of body mass</source>
        <translation>% des Körpergewichts</translation>
    </message>
    <message>
        <source>% of the full position</source>
        <translation>% der vollen Position</translation>
    </message>
    <message>
        <source>1 session</source>
        <translation>1 Einheit</translation>
    </message>
    <message>
        <source>A plateau is likely ({share}).</source>
        <translation>Ein Plateau ist wahrscheinlich ({share}).</translation>
    </message>
    <message>
        <source>A plateau is possible ({share}).</source>
        <translation>Ein Plateau ist möglich ({share}).</translation>
    </message>
    <message>
        <source>A plateau is unlikely ({share}).</source>
        <translation>Ein Plateau ist unwahrscheinlich ({share}).</translation>
    </message>
    <message>
        <source>A plateau is very likely ({share}).</source>
        <translation>Ein Plateau ist sehr wahrscheinlich ({share}).</translation>
    </message>
    <message>
        <source>A trend needs two weeks: from {day} on.</source>
        <translation>Ein Trend braucht zwei Wochen: ab {day}.</translation>
    </message>
    <message>
        <source>A year earlier</source>
        <translation>Ein Jahr früher</translation>
    </message>
    <message>
        <source>All other variations</source>
        <translation>Alle anderen Varianten</translation>
    </message>
    <message>
        <source>Best set</source>
        <translation>Bester Satz</translation>
    </message>
    <message>
        <source>Best so far ({day}): {done}.</source>
        <translation>Bestleistung bisher ({day}): {done}.</translation>
    </message>
    <message>
        <source>Down {gain} a week (80 %: {low} to {high}).</source>
        <translation>Minus {gain} pro Woche (80 %: {low} bis {high}).</translation>
    </message>
    <message>
        <source>Effective load</source>
        <translation>Wirksame Last</translation>
    </message>
    <message>
        <source>Estimated maximum</source>
        <translation>Gesch. Maximum</translation>
    </message>
    <message>
        <source>Four</source>
        <translation>Vier</translation>
    </message>
    <message>
        <source>Goal: {goal}.</source>
        <translation>Ziel: {goal}.</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Haltezeit</translation>
    </message>
    <message>
        <source>Last done {days} ago.</source>
        <translation>Zuletzt gemacht: {days} her.</translation>
    </message>
    <message>
        <source>Level: {gain} a week (80 %: {low} to {high}).</source>
        <translation>Gleich: {gain} pro Woche (80 %: {low} bis {high}).</translation>
    </message>
    <message>
        <source>Moment</source>
        <translation>Moment</translation>
    </message>
    <message>
        <source>No gain is to be seen ({share}).</source>
        <translation>Kein Zuwachs ist zu sehen ({share}).</translation>
    </message>
    <message>
        <source>Now: {own} {here} {unit}, {other} {there} {unit}.</source>
        <translation>Jetzt: {own} {here} {unit}, {other} {there} {unit}.</translation>
    </message>
    <message>
        <source>Of body mass: {own} {here} %, {other} {there} %.</source>
        <translation>Vom Körpergewicht: {own} {here} %, {other} {there} %.</translation>
    </message>
    <message>
        <source>One more session makes a trend.</source>
        <translation>Eine Einheit mehr ergibt einen Trend.</translation>
    </message>
    <message>
        <source>Reps</source>
        <translation>Wdh</translation>
    </message>
    <message>
        <source>Reps at a load</source>
        <translation>Wdh bei Last</translation>
    </message>
    <message>
        <source>Sessions of deload or pain make no trend.</source>
        <translation>Einheiten mit Deload oder Schmerz ergeben keinen Trend.</translation>
    </message>
    <message>
        <source>Such sets give no estimate of the maximum, so no trend.</source>
        <translation>Solche Sätze erlauben keine Schätzung des Maximums, also keinen Trend.</translation>
    </message>
    <message>
        <source>The {weeks} before</source>
        <translation>Die {weeks} davor</translation>
    </message>
    <message>
        <source>These {weeks}</source>
        <translation>Diese {weeks}</translation>
    </message>
    <message>
        <source>Three</source>
        <translation>Drei</translation>
    </message>
    <message>
        <source>Top load</source>
        <translation>Höchste Last</translation>
    </message>
    <message>
        <source>Trainee: {name}</source>
        <translation>Person: {name}</translation>
    </message>
    <message>
        <source>Two</source>
        <translation>Zwei</translation>
    </message>
    <message>
        <source>Up {gain} a week (80 %: {low} to {high}).</source>
        <translation>Plus {gain} pro Woche (80 %: {low} bis {high}).</translation>
    </message>
    <message>
        <source>Variation</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>Variation: {name}</source>
        <translation>Variante: {name}</translation>
    </message>
    <message>
        <source>Variations known by their order alone make no trend.</source>
        <translation>Varianten, von denen nur die Reihenfolge bekannt ist, ergeben keinen Trend.</translation>
    </message>
    <message>
        <source>Week of {day}: {done} hard sets, none planned</source>
        <translation>Woche ab {day}: {done} harte Sätze, keine geplant</translation>
    </message>
    <message>
        <source>Week of {day}: {done} of {planned} hard sets planned</source>
        <translation>Woche ab {day}: {done} von {planned} geplanten harten Sätzen</translation>
    </message>
    <message>
        <source>Which of the two gains faster is open.</source>
        <translation>Welche Seite schneller zulegt, ist offen.</translation>
    </message>
    <message>
        <source>a test</source>
        <translation>ein Test</translation>
    </message>
    <message>
        <source>away</source>
        <translation>abwesend</translation>
    </message>
    <message>
        <source>best set, load × reps</source>
        <translation>bester Satz, Last × Wdh</translation>
    </message>
    <message>
        <source>best so far</source>
        <translation>Bestleistung</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>Deload</translation>
    </message>
    <message>
        <source>effective load {load}</source>
        <translation>wirksame Last {load}</translation>
    </message>
    <message>
        <source>estimated one-repetition maximum</source>
        <translation>geschätztes 1-Wdh-Maximum</translation>
    </message>
    <message>
        <source>estimated {load} (80 %: {low} to {high})</source>
        <translation>geschätzt {load} (80 %: {low} bis {high})</translation>
    </message>
    <message>
        <source>estimated {load}, uncertain (80 %: {low} to {high})</source>
        <translation>geschätzt {load}, unsicher (80 %: {low} bis {high})</translation>
    </message>
    <message>
        <source>goal {what}</source>
        <translation>Ziel {what}</translation>
    </message>
    <message>
        <source>highest effective load of a session</source>
        <translation>höchste wirksame Last einer Einheit</translation>
    </message>
    <message>
        <source>highest load of a session</source>
        <translation>höchste Last einer Einheit</translation>
    </message>
    <message>
        <source>hold of the best set</source>
        <translation>Haltezeit des besten Satzes</translation>
    </message>
    <message>
        <source>ill</source>
        <translation>krank</translation>
    </message>
    <message>
        <source>injured</source>
        <translation>verletzt</translation>
    </message>
    <message>
        <source>load × reps {work}</source>
        <translation>Last × Wdh {work}</translation>
    </message>
    <message>
        <source>moment of the best set, as a share of the full position</source>
        <translation>Moment des besten Satzes, als Anteil der vollen Position</translation>
    </message>
    <message>
        <source>most reps of a set at one load</source>
        <translation>meiste Wdh eines Satzes bei einer Last</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <source>pain {pain} of 10</source>
        <translation>Schmerz {pain} von 10</translation>
    </message>
    <message>
        <source>paler: deload or pain, not counted</source>
        <translation>blasser: Deload oder Schmerz, nicht gezählt</translation>
    </message>
    <message>
        <source>reps</source>
        <translation>Wdh</translation>
    </message>
    <message>
        <source>reps at {load}</source>
        <translation>Wdh bei {load}</translation>
    </message>
    <message>
        <source>reps of the best set</source>
        <translation>Wdh des besten Satzes</translation>
    </message>
    <message>
        <source>variation of the best set</source>
        <translation>Variante des besten Satzes</translation>
    </message>
    <message>
        <source>{count} in reserve</source>
        <translation>{count} in Reserve</translation>
    </message>
    <message>
        <source>{count} more sessions make a trend.</source>
        <translation>{count} Einheiten mehr ergeben einen Trend.</translation>
    </message>
    <message>
        <source>{count} sessions</source>
        <translation>{count} Einheiten</translation>
    </message>
    <message>
        <source>{day}: {done}</source>
        <translation>{day}: {done}</translation>
    </message>
    <message>
        <source>{first}, {second} a week.</source>
        <translation>{first}, {second} pro Woche.</translation>
    </message>
    <message>
        <source>{goal} (wanted by {day})</source>
        <translation>{goal} (gewünscht bis {day})</translation>
    </message>
    <message>
        <source>{goal} between {first} and {last}.</source>
        <translation>{goal} zwischen {first} und {last}.</translation>
    </message>
    <message>
        <source>{goal} by {last}, perhaps already.</source>
        <translation>{goal} bis {last}, vielleicht schon jetzt.</translation>
    </message>
    <message>
        <source>{goal} is reached.</source>
        <translation>{goal} ist erreicht.</translation>
    </message>
    <message>
        <source>{goal} may be reached, or not within a year.</source>
        <translation>{goal} ist vielleicht erreicht, oder nicht in einem Jahr.</translation>
    </message>
    <message>
        <source>{goal}: not within a year at this rate.</source>
        <translation>{goal}: bei diesem Tempo nicht in einem Jahr.</translation>
    </message>
    <message>
        <source>{goal}: {first} at the earliest, perhaps not within a year.</source>
        <translation>{goal}: frühestens {first}, vielleicht nicht in einem Jahr.</translation>
    </message>
    <message>
        <source>{name} down {gain}</source>
        <translation>{name} minus {gain}</translation>
    </message>
    <message>
        <source>{name} gains faster ({share}).</source>
        <translation>{name} legt schneller zu ({share}).</translation>
    </message>
    <message>
        <source>{name} has nothing of this to show.</source>
        <translation>{name} hat davon nichts zu zeigen.</translation>
    </message>
    <message>
        <source>{name} has too few sessions for a trend.</source>
        <translation>{name} hat zu wenige Einheiten für einen Trend.</translation>
    </message>
    <message>
        <source>{name} level</source>
        <translation>{name} gleich</translation>
    </message>
    <message>
        <source>{name} perhaps gains faster ({share}).</source>
        <translation>{name} legt vielleicht schneller zu ({share}).</translation>
    </message>
    <message>
        <source>{name} up {gain}</source>
        <translation>{name} plus {gain}</translation>
    </message>
    <message>
        <source>{name}: no session.</source>
        <translation>{name}: keine Einheit.</translation>
    </message>
    <message>
        <source>{name}: {first} {arrow} {last} {unit} ({change}).</source>
        <translation>{name}: {first} {arrow} {last} {unit} ({change}).</translation>
    </message>
    <message>
        <source>{name}: {sessions}, first {first}, best {best}.</source>
        <translation>{name}: {sessions}, erste {first}, beste {best}.</translation>
    </message>
    <message>
        <source>{signs} 11 reps and more</source>
        <translation>{signs} 11 Wdh und mehr</translation>
    </message>
    <message>
        <source>{signs} 11 reps and more, uncertain</source>
        <translation>{signs} 11 Wdh und mehr, unsicher</translation>
    </message>
    <message>
        <source>{signs} uncertain</source>
        <translation>{signs} unsicher</translation>
    </message>
    <message>
        <source>{signs} uncertain, reserve not told</source>
        <translation>{signs} unsicher, Reserve nicht genannt</translation>
    </message>
    <message>
        <source>■ up to 5 reps</source>
        <translation>■ bis 5 Wdh</translation>
    </message>
    <message>
        <source>▲ pain</source>
        <translation>▲ Schmerz</translation>
    </message>
    <message>
        <source>◇ – – {name}</source>
        <translation>◇ – – {name}</translation>
    </message>
    <message>
        <source>● 6 to 10 reps</source>
        <translation>● 6 bis 10 Wdh</translation>
    </message>
    <message>
        <source>★ best so far</source>
        <translation>★ Bestleistung</translation>
    </message>
</context>
<context>
    <name>ProgressArea</name>
    <message>
        <source>1 year</source>
        <translation>1 Jahr</translation>
    </message>
    <message>
        <source>A lighter or heavier load</source>
        <translation>Leichtere oder schwerere Last</translation>
    </message>
    <message>
        <source>Alt+Down, Alt+Up</source>
        <translation>Alt+Herunter, Alt+Hoch</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Relativ</translation>
    </message>
    <message>
        <source>Compare with something</source>
        <translation>Mit etwas vergleichen</translation>
    </message>
    <message>
        <source>First and last session</source>
        <translation>Erste und letzte Einheit</translation>
    </message>
    <message>
        <source>From session to session</source>
        <translation>Von Einheit zu Einheit</translation>
    </message>
    <message>
        <source>Hard sets a week, done over planned</source>
        <translation>Harte Sätze pro Woche, gemacht über geplant</translation>
    </message>
    <message>
        <source>Home, End</source>
        <translation>Pos1, Ende</translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation>Links, Rechts</translation>
    </message>
    <message>
        <source>Less and more of the time</source>
        <translation>Weniger und mehr von der Zeit</translation>
    </message>
    <message>
        <source>Open the session</source>
        <translation>Einheit öffnen</translation>
    </message>
    <message>
        <source>Previous and next line</source>
        <translation>Vorige und nächste Linie</translation>
    </message>
    <message>
        <source>Report</source>
        <translation>Bericht</translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation>Speichern…</translation>
    </message>
    <message>
        <source>Set a goal</source>
        <translation>Ziel setzen</translation>
    </message>
    <message>
        <source>Span</source>
        <translation>Zeitraum</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Table, body mass</source>
        <translation>Tabelle, relativ zum Körpergewicht</translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation>Was gezeigt wird</translation>
    </message>
    <message>
        <source>all</source>
        <translation>alles</translation>
    </message>
</context>
<context>
    <name>ProgressTable</name>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>RIR</source>
        <translation>RIR</translation>
    </message>
    <message>
        <source>Sessions of the chart</source>
        <translation>Einheiten im Diagramm</translation>
    </message>
    <message>
        <source>Set</source>
        <translation>Satz</translation>
    </message>
</context>
<context>
    <name>Proposals</name>
    <message>
        <source>Choose what to do</source>
        <translation>Wählen, was zu tun ist</translation>
    </message>
    <message>
        <source>Look at the program</source>
        <translation>Plan ansehen</translation>
    </message>
    <message>
        <source>Look at the rule</source>
        <translation>Regel ansehen</translation>
    </message>
    <message>
        <source>Look at the targets</source>
        <translation>Vorgaben ansehen</translation>
    </message>
    <message>
        <source>Look at the trainee</source>
        <translation>Person ansehen</translation>
    </message>
    <message>
        <source>Look at the week</source>
        <translation>Woche ansehen</translation>
    </message>
    <message>
        <source>Move a day</source>
        <translation>Tag verschieben</translation>
    </message>
    <message>
        <source>Plan a deload</source>
        <translation>Deload planen</translation>
    </message>
    <message>
        <source>Record the clearance</source>
        <translation>Freigabe festhalten</translation>
    </message>
    <message>
        <source>Record the screening</source>
        <translation>Gesundheitsfragen festhalten</translation>
    </message>
    <message>
        <source>Say what grows next</source>
        <translation>Angeben, was als Nächstes steigt</translation>
    </message>
    <message>
        <source>Say what is recorded</source>
        <translation>Angeben, was aufgezeichnet ist</translation>
    </message>
</context>
<context>
    <name>QShortcut</name>
    <message>
        <source>Alt</source>
        <translation>Alt</translation>
    </message>
    <message>
        <source>Backspace</source>
        <translation>Rücktaste</translation>
    </message>
    <message>
        <source>Ctrl</source>
        <translation>Strg</translation>
    </message>
    <message>
        <source>Del</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Herunter</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Enter</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Home</source>
        <translation>Pos1</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>PgDown</source>
        <translation>Bild abwärts</translation>
    </message>
    <message>
        <source>PgUp</source>
        <translation>Bild aufwärts</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Return</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>Umschalt</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Leertaste</translation>
    </message>
    <message>
        <source>Tab</source>
        <translation>Tab</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Hoch</translation>
    </message>
</context>
<context>
    <name>RangeRow</name>
    <message>
        <source>Faster</source>
        <translation>Schneller</translation>
    </message>
    <message>
        <source>In steps of {by} from {floor}: allowed is {below} or {above}.</source>
        <translation>In Schritten von {by} ab {floor}: erlaubt ist {below} oder {above}.</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Say how far: only the slowest may go on without an end.</source>
        <translation>Bis wohin? Nur die langsamste darf ohne Ende weitergehen.</translation>
    </message>
    <message>
        <source>Slower</source>
        <translation>Langsamer</translation>
    </message>
    <message>
        <source>The hardest is easier than the easiest: exchange them.</source>
        <translation>Die schwerste ist leichter als die leichteste: bitte tauschen.</translation>
    </message>
    <message>
        <source>To {ceiling} is below from {floor}: allowed is {floor} and more.</source>
        <translation>Bis {ceiling} liegt unter von {floor}: erlaubt ist {floor} und mehr.</translation>
    </message>
    <message>
        <source>easiest</source>
        <translation>leichteste</translation>
    </message>
    <message>
        <source>hardest</source>
        <translation>schwerste</translation>
    </message>
    <message>
        <source>the easiest there is</source>
        <translation>die leichteste, die es gibt</translation>
    </message>
    <message>
        <source>the hardest there is</source>
        <translation>die schwerste, die es gibt</translation>
    </message>
    <message>
        <source>{name}, by</source>
        <translation>{name}, um</translation>
    </message>
    <message>
        <source>{name}, from</source>
        <translation>{name}, von</translation>
    </message>
    <message>
        <source>{name}, to</source>
        <translation>{name}, bis</translation>
    </message>
    <message>
        <source>{name}: when a slower one moves</source>
        <translation>{name}: wenn eine langsamere steigt</translation>
    </message>
</context>
<context>
    <name>RangeRows</name>
    <message>
        <source>A floor lies above to {ceiling}: allowed is up to that.</source>
        <translation>Eine Untergrenze liegt über bis {ceiling}: erlaubt ist bis dahin.</translation>
    </message>
</context>
<context>
    <name>ReasonField</name>
    <message>
        <source>Needed: the reason, in a word or two. Esc leaves the caution open.</source>
        <translation>Nötig: der Grund, in ein, zwei Worten. Esc lässt den Hinweis offen.</translation>
    </message>
    <message>
        <source>Why not now? Return keeps it with the record</source>
        <translation>Warum jetzt nicht? Eingabe bewahrt es auf</translation>
    </message>
    <message>
        <source>Why this caution is set aside</source>
        <translation>Warum dieser Hinweis zurückgestellt wird</translation>
    </message>
</context>
<context>
    <name>Reasons</name>
    <message>
        <source> on {day}</source>
        <translation> am {day}</translation>
    </message>
    <message>
        <source>(about {share_before} becomes {share_after} of body mass, ± {plus_minus})</source>
        <translation>(etwa {share_before} wird {share_after} des Körpergewichts, ± {plus_minus})</translation>
    </message>
    <message>
        <source>({share_before} becomes {share_after} of body mass)</source>
        <translation>({share_before} wird {share_after} des Körpergewichts)</translation>
    </message>
    <message>
        <source>A deload is not counted</source>
        <translation>Ein Deload wird nicht gezählt</translation>
    </message>
    <message>
        <source>A new range, in which the line stays</source>
        <translation>Eine neue Spanne, in der die Linie bleibt</translation>
    </message>
    <message>
        <source>A start is needed: assess, or enter one</source>
        <translation>Ein Start ist nötig: testen oder einen eingeben</translation>
    </message>
    <message>
        <source>A test is not counted</source>
        <translation>Ein Test wird nicht gezählt</translation>
    </message>
    <message>
        <source>A test, no maximum: loads rise; stop after the first set with {stop_rir} or fewer clean repetitions left</source>
        <translation>Ein Test, kein Maximum: Lasten steigen; nach dem ersten Satz mit {stop_rir} oder weniger sauberen Wiederholungen in Reserve aufhören</translation>
    </message>
    <message>
        <source>A test, no maximum: stop while the position is still clean</source>
        <translation>Ein Test, kein Maximum: aufhören, solange die Position noch sauber ist</translation>
    </message>
    <message>
        <source>A test, no maximum: stop with {stop_rir} clean repetitions left</source>
        <translation>Ein Test, kein Maximum: bei {stop_rir} sauberen Wiederholungen in Reserve aufhören</translation>
    </message>
    <message>
        <source>Again, and note the reps in reserve: {needed} are needed to go on</source>
        <translation>Noch einmal, mit Wdh in Reserve notiert: {needed} sind nötig, um weiterzugehen</translation>
    </message>
    <message>
        <source>All sets as asked{on_day}: now {after}</source>
        <translation>Alle Sätze wie vorgegeben{on_day}: jetzt {after}</translation>
    </message>
    <message>
        <source>As asked {streak} of {needed} times in a row: once more</source>
        <translation>Wie vorgegeben, {streak} von {needed} Malen in Folge: noch einmal</translation>
    </message>
    <message>
        <source>As asked{on_day}: slower, {after} a repetition</source>
        <translation>Wie vorgegeben{on_day}: langsamer, {after} je Wiederholung</translation>
    </message>
    <message>
        <source>As asked{on_day}: {before} becomes {after}</source>
        <translation>Wie vorgegeben{on_day}: {before} wird {after}</translation>
    </message>
    <message>
        <source>Back to the same place twice in {weeks} weeks: a deload or another variable</source>
        <translation>Zweimal in {weeks} Wochen zurück an derselben Stelle: ein Deload oder eine andere Größe</translation>
    </message>
    <message>
        <source>Cleared by a licensed professional: goes on</source>
        <translation>Von einer zugelassenen Fachperson freigegeben: es geht weiter</translation>
    </message>
    <message>
        <source>Deload: sets times {sets_factor}, {load_percent} % lighter</source>
        <translation>Deload: Sätze mal {sets_factor}, {load_percent} % leichter</translation>
    </message>
    <message>
        <source>Done above what was asked: {before_g} becomes {after_g}</source>
        <translation>Mehr gemacht als vorgegeben: {before_g} wird {after_g}</translation>
    </message>
    <message>
        <source>Done while nothing was asked: not counted</source>
        <translation>Gemacht, während es keine Vorgabe gab: nicht gezählt</translation>
    </message>
    <message>
        <source>Done, but hard: {rir} reps in reserve where {target_rir} were meant</source>
        <translation>Gemacht, aber schwer: {rir} Wdh in Reserve, wo {target_rir} gemeint waren</translation>
    </message>
    <message>
        <source>Every set reached {before}{on_day}: now {after}</source>
        <translation>Jeder Satz erreichte {before}{on_day}: jetzt {after}</translation>
    </message>
    <message>
        <source>From the re-test{on_day}</source>
        <translation>Aus neuem Test{on_day} gelesen</translation>
    </message>
    <message>
        <source>Held {before} in every set{on_day}: now {after}</source>
        <translation>{before} in jedem Satz gehalten{on_day}: jetzt {after}</translation>
    </message>
    <message>
        <source>Less than asked ({streak} of {allowed} in a row): the same again</source>
        <translation>Weniger als vorgegeben ({streak} von {allowed} in Folge): noch einmal dasselbe</translation>
    </message>
    <message>
        <source>Missed {misses} in a row, and nothing easier can be set up</source>
        <translation>Verfehlt, {misses} in Folge, und nichts Leichteres lässt sich aufbauen</translation>
    </message>
    <message>
        <source>Missed {misses} in a row, and {instead_of} cannot go back: {variable} does, {before} becomes {after}</source>
        <translation>Verfehlt, {misses} in Folge, und {instead_of} kann nicht zurück: {variable} zurück, {before} wird {after}</translation>
    </message>
    <message>
        <source>Missed {misses} in a row: {variable} back, {before} becomes {after}</source>
        <translation>Verfehlt, {misses} in Folge: {variable} zurück, {before} wird {after}</translation>
    </message>
    <message>
        <source>New range: {after}</source>
        <translation>Neue Spanne: {after}</translation>
    </message>
    <message>
        <source>New range: {before} becomes {after}</source>
        <translation>Neue Spanne: {before} wird {after}</translation>
    </message>
    <message>
        <source>Not done the last time: the same again</source>
        <translation>Beim letzten Mal nicht gemacht: noch einmal dasselbe</translation>
    </message>
    <message>
        <source>Nothing is asked until a licensed professional&apos;s clearance is recorded</source>
        <translation>Keine Vorgabe, bis die Freigabe einer zugelassenen Fachperson festgehalten ist</translation>
    </message>
    <message>
        <source>Pain {pain} of 10: no increase</source>
        <translation>Schmerz {pain} von 10: keine Steigerung</translation>
    </message>
    <message>
        <source>Pain {pain} of 10: nothing is asked until you choose lighter, a substitute or a clearance</source>
        <translation>Schmerz {pain} von 10: keine Vorgabe, bis leichter, Ersatz oder Freigabe gewählt ist</translation>
    </message>
    <message>
        <source>Ready for one more day, but {weekdays} leave no full day between</source>
        <translation>Bereit für einen Tag mehr, aber {weekdays} lassen keinen vollen Tag dazwischen</translation>
    </message>
    <message>
        <source>Ready for one more day: {weekday}</source>
        <translation>Bereit für einen Tag mehr: {weekday}</translation>
    </message>
    <message>
        <source>Set by the coach{on_day}</source>
        <translation>Vom Coach{on_day} gesetzt</translation>
    </message>
    <message>
        <source>Set by the coach{on_day}: {note}</source>
        <translation>Vom Coach{on_day} gesetzt: {note}</translation>
    </message>
    <message>
        <source>Start from a test</source>
        <translation>Start nach einem Test</translation>
    </message>
    <message>
        <source>The rule is at its end: say what should grow next</source>
        <translation>Die Regel ist am Ende: angeben, was als Nächstes steigen soll</translation>
    </message>
    <message>
        <source>The start</source>
        <translation>Der Start</translation>
    </message>
    <message>
        <source>The start by what was done before</source>
        <translation>Der Start nach dem, was zuvor gemacht wurde</translation>
    </message>
    <message>
        <source>The start corrected: {before_g} becomes {after_g}</source>
        <translation>Der Start berichtigt: {before_g} wird {after_g}</translation>
    </message>
    <message>
        <source>The start that the coach set</source>
        <translation>Der Start, den der Coach gesetzt hat</translation>
    </message>
    <message>
        <source>The start that the program gives</source>
        <translation>Der Start, den der Plan vorgibt</translation>
    </message>
    <message>
        <source>Top of the range at {amount}{on_day}: {before} becomes {after}, from {restart}</source>
        <translation>Oberes Ende der Spanne bei {amount}{on_day}: {before} wird {after}, ab {restart}</translation>
    </message>
    <message>
        <source>Top of the range{on_day}: {before} becomes {after}</source>
        <translation>Oberes Ende der Spanne{on_day}: {before} wird {after}</translation>
    </message>
    <message>
        <source>the first session may correct it</source>
        <translation>die erste Einheit kann ihn berichtigen</translation>
    </message>
    <message>
        <source>the first {count} sessions may correct it</source>
        <translation>die ersten {count} Einheiten können ihn berichtigen</translation>
    </message>
    <message>
        <source>{after} is {over} more, too large a jump for now</source>
        <translation>{after} ist {over} mehr, vorerst ein zu großer Sprung</translation>
    </message>
    <message>
        <source>{after} is {over} more, too large a jump: {reps_needed} reps here first</source>
        <translation>{after} ist {over} mehr, ein zu großer Sprung: hier erst {reps_needed} Wdh</translation>
    </message>
    <message>
        <source>{before_g} cannot be made with the equipment: {after_g}</source>
        <translation>{before_g} lässt sich mit der Ausstattung nicht laden: {after_g}</translation>
    </message>
    <message>
        <source>{before} cannot be set up with the equipment: {after}</source>
        <translation>{before} lässt sich mit der Ausstattung nicht aufbauen: {after}</translation>
    </message>
    <message>
        <source>{days} since the last time: a new start is needed</source>
        <translation>{days} seit dem letzten Mal: ein neuer Start ist nötig</translation>
    </message>
    <message>
        <source>{days} since the last time: from the bottom of the range</source>
        <translation>{days} seit dem letzten Mal: vom unteren Ende der Spanne</translation>
    </message>
    <message>
        <source>{days} since the last time: one variation easier</source>
        <translation>{days} seit dem letzten Mal: eine Variante leichter</translation>
    </message>
    <message>
        <source>{days} since the last time: the last again</source>
        <translation>{days} seit dem letzten Mal: noch einmal das Letzte</translation>
    </message>
    <message>
        <source>{days} since the last time: {percent} % lighter</source>
        <translation>{days} seit dem letzten Mal: {percent} % leichter</translation>
    </message>
    <message>
        <source>{done_g} was done where {asked_g} was asked, too far above to follow. Is it right?</source>
        <translation>{done_g} gemacht, wo {asked_g} vorgegeben war, zu weit darüber, um zu folgen. Stimmt das?</translation>
    </message>
    <message>
        <source>{done} in the last set, {needed} needed to go on: the same again</source>
        <translation>{done} im letzten Satz, {needed} nötig, um weiterzugehen: noch einmal dasselbe</translation>
    </message>
    <message>
        <source>{done} of {asked} sets done: the same again</source>
        <translation>{done} von {asked} Sätzen gemacht: noch einmal dasselbe</translation>
    </message>
    <message>
        <source>{done} was done where {asked} was asked, too far above to follow. Is it right?</source>
        <translation>„{done}“ gemacht, wo „{asked}“ vorgegeben war, zu weit darüber, um zu folgen. Stimmt das?</translation>
    </message>
    <message>
        <source>{percent} % of the main line</source>
        <translation>{percent} % der Hauptlinie</translation>
    </message>
    <message>
        <source>{percent} % of {line}</source>
        <translation>{percent} % von {line}</translation>
    </message>
    <message>
        <source>{rir} reps in reserve, {needed} needed to go on: the same again</source>
        <translation>{rir} Wdh in Reserve, {needed} nötig, um weiterzugehen: noch einmal dasselbe</translation>
    </message>
    <message>
        <source>{total} in all, {before} the last time: the same again</source>
        <translation>{total} insgesamt, {before} beim letzten Mal: noch einmal dasselbe</translation>
    </message>
</context>
<context>
    <name>Record</name>
    <message>
        <source>Look at it again, then repeat the change.</source>
        <translation>Noch einmal ansehen, dann die Änderung wiederholen.</translation>
    </message>
</context>
<context>
    <name>RedFlagBanner</name>
    <message>
        <source>Nothing is asked of this trainee until a licensed professional&apos;s clearance is recorded with name and date.</source>
        <translation>Für diese Person gibt es keine Vorgabe, bis die Freigabe einer zugelassenen Fachperson mit Name und Datum festgehalten ist.</translation>
    </message>
</context>
<context>
    <name>ReplaceBar</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Replace everywhere</source>
        <translation>Überall ersetzen</translation>
    </message>
    <message>
        <source>The exercise to put in its place</source>
        <translation>Die Übung, die an ihre Stelle tritt</translation>
    </message>
    <message>
        <source>The exercise to replace</source>
        <translation>Die Übung, die ersetzt wird</translation>
    </message>
    <message>
        <source>with: part of its name</source>
        <translation>durch: Teil des Namens</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>1 hard set</source>
        <translation>1 harter Satz</translation>
    </message>
    <message>
        <source>1 session</source>
        <translation>1 Einheit</translation>
    </message>
    <message>
        <source>Ahead</source>
        <translation>Ausblick</translation>
    </message>
    <message>
        <source>All trainees</source>
        <translation>Alle Personen</translation>
    </message>
    <message>
        <source>Best set</source>
        <translation>Bester Satz</translation>
    </message>
    <message>
        <source>Best set, better than ever</source>
        <translation>Bester Satz, besser als je zuvor</translation>
    </message>
    <message>
        <source>Better than ever before</source>
        <translation>Besser als je zuvor</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Körpergewicht</translation>
    </message>
    <message>
        <source>Chart: {what}</source>
        <translation>Diagramm: {what}</translation>
    </message>
    <message>
        <source>Chart: {what}, {unit}</source>
        <translation>Diagramm: {what}, {unit}</translation>
    </message>
    <message>
        <source>Coach&apos;s report</source>
        <translation>Bericht des Coachs</translation>
    </message>
    <message>
        <source>Days kept</source>
        <translation>Tage gehalten</translation>
    </message>
    <message>
        <source>Days trained</source>
        <translation>Trainingstage</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Gemacht</translation>
    </message>
    <message>
        <source>Down: {lines}</source>
        <translation>Minus: {lines}</translation>
    </message>
    <message>
        <source>Estimates from load and repetitions: square up to 5 reps, disc 6 to 10, ring 11 and more or uncertain; grey not counted; star best so far. Line and band: trend with 80 % band, dashed where it is only foreseen. Bars: hard sets a week, outlined as planned.</source>
        <translation>Schätzungen aus Last und Wiederholungen: Quadrat bis 5 Wdh, Scheibe 6 bis 10, Ring ab 11 oder unsicher; grau nicht gezählt; Stern Bestleistung. Linie und Band: Trend mit 80-%-Band, gestrichelt, wo er nur vorausgesehen ist. Balken: harte Sätze pro Woche, umrandet wie geplant.</translation>
    </message>
    <message>
        <source>Goal: {line}, {goal}.</source>
        <translation>Ziel: {line}, {goal}.</translation>
    </message>
    <message>
        <source>Hard sets</source>
        <translation>Harte Sätze</translation>
    </message>
    <message>
        <source>Hard sets a week by muscle</source>
        <translation>Harte Sätze pro Woche nach Muskel</translation>
    </message>
    <message>
        <source>Hard sets a week, everybody</source>
        <translation>Harte Sätze pro Woche, alle</translation>
    </message>
    <message>
        <source>Highest load of a best set</source>
        <translation>Höchste Last eines besten Satzes</translation>
    </message>
    <message>
        <source>Next session: {day}.</source>
        <translation>Nächste Einheit: {day}.</translation>
    </message>
    <message>
        <source>Not trained</source>
        <translation>Nicht trainiert</translation>
    </message>
    <message>
        <source>Planned days kept</source>
        <translation>Geplante Tage gehalten</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>Progress report</source>
        <translation>Fortschrittsbericht</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Sessions with pain</source>
        <translation>Einheiten mit Schmerz</translation>
    </message>
    <message>
        <source>Source: {source}</source>
        <translation>Quelle: {source}</translation>
    </message>
    <message>
        <source>Time noted</source>
        <translation>Notierte Zeit</translation>
    </message>
    <message>
        <source>To be careful about</source>
        <translation>Zu beachten</translation>
    </message>
    <message>
        <source>Too few sessions to tell</source>
        <translation>Zu wenige Einheiten für eine Aussage</translation>
    </message>
    <message>
        <source>Trainee</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Trainees</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Trainees to be careful about</source>
        <translation>Personen, auf die zu achten ist</translation>
    </message>
    <message>
        <source>Trainees with a line going up</source>
        <translation>Personen mit einer Linie im Plus</translation>
    </message>
    <message>
        <source>Up and down: the 80 % band of the trend lies on one side of level.</source>
        <translation>Plus und Minus: das 80-%-Band des Trends liegt auf einer Seite von gleich.</translation>
    </message>
    <message>
        <source>Up: {lines}</source>
        <translation>Plus: {lines}</translation>
    </message>
    <message>
        <source>level or open: {count}</source>
        <translation>gleich oder offen: {count}</translation>
    </message>
    <message>
        <source>{count} hard sets</source>
        <translation>{count} harte Sätze</translation>
    </message>
    <message>
        <source>{count} more</source>
        <translation>{count} weitere</translation>
    </message>
    <message>
        <source>{count} sessions</source>
        <translation>{count} Einheiten</translation>
    </message>
    <message>
        <source>{done} of {planned}</source>
        <translation>{done} von {planned}</translation>
    </message>
    <message>
        <source>{done} of {planned} planned ({share})</source>
        <translation>{done} von {planned} geplant ({share})</translation>
    </message>
    <message>
        <source>{done}, {planned} planned</source>
        <translation>{done}, {planned} geplant</translation>
    </message>
    <message>
        <source>{first} to {last}</source>
        <translation>{first} bis {last}</translation>
    </message>
    <message>
        <source>{goal} by {day}</source>
        <translation>{goal} bis {day}</translation>
    </message>
    <message>
        <source>{hours} h {minutes} min</source>
        <translation>{hours} h {minutes} min</translation>
    </message>
    <message>
        <source>{line}: {set} on {day}</source>
        <translation>{line}: {set} am {day}</translation>
    </message>
    <message>
        <source>{sets} a week: {what} ({source})</source>
        <translation>{sets} pro Woche: {what} ({source})</translation>
    </message>
</context>
<context>
    <name>ReportArea</name>
    <message>
        <source>1 page</source>
        <translation>1 Seite</translation>
    </message>
    <message>
        <source>1 year</source>
        <translation>1 Jahr</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Choose a trainee in the roster, or everybody.</source>
        <translation>Links in der Liste eine Person wählen, oder alle.</translation>
    </message>
    <message>
        <source>Everybody</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>Give up</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Given up. Choose a span to begin again.</source>
        <translation>Abgebrochen. Ein Zeitraum beginnt es neu.</translation>
    </message>
    <message>
        <source>Larger, smaller, whole page</source>
        <translation>Größer, kleiner, ganze Seite</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>Letzter Tag</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Numbers…</source>
        <translation>Zahlen…</translation>
    </message>
    <message>
        <source>Of whom</source>
        <translation>Von wem</translation>
    </message>
    <message>
        <source>One trainee, their program, everybody</source>
        <translation>Eine Person, ihr Plan, alle</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Preview of the report</source>
        <translation>Vorschau des Berichts</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Progress</source>
        <translation>Fortschritt</translation>
    </message>
    <message>
        <source>Reading everybody&apos;s record: {share}</source>
        <translation>Lese die Aufzeichnungen aller: {share}</translation>
    </message>
    <message>
        <source>Reading everybody&apos;s record…</source>
        <translation>Lese die Aufzeichnungen aller…</translation>
    </message>
    <message>
        <source>Reading the program…</source>
        <translation>Lese den Plan…</translation>
    </message>
    <message>
        <source>Reports</source>
        <translation>Berichte</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF…</translation>
    </message>
    <message>
        <source>Save the numbers…</source>
        <translation>Zahlen speichern…</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Span</source>
        <translation>Zeitraum</translation>
    </message>
    <message>
        <source>The program</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>The trainee</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Trainees</source>
        <translation>Personen</translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation>Wochen</translation>
    </message>
    <message>
        <source>{count} pages</source>
        <translation>{count} Seiten</translation>
    </message>
    <message>
        <source>{name} did not train in this span: choose other days.</source>
        <translation>{name} hat in diesem Zeitraum nicht trainiert: andere Tage wählen.</translation>
    </message>
    <message>
        <source>{name} has no program now: give them one first.</source>
        <translation>{name} hat jetzt keinen Plan: zuerst einen zuweisen.</translation>
    </message>
</context>
<context>
    <name>Roster</name>
    <message>
        <source>1 trainee</source>
        <translation>1 Person</translation>
    </message>
    <message>
        <source>Find a trainee</source>
        <translation>Person suchen</translation>
    </message>
    <message>
        <source>Find a trainee by name</source>
        <translation>Person nach Namen suchen</translation>
    </message>
    <message>
        <source>Roster</source>
        <translation>Liste</translation>
    </message>
    <message>
        <source>away</source>
        <translation>abwesend</translation>
    </message>
    <message>
        <source>deload from {day}</source>
        <translation>Deload ab {day}</translation>
    </message>
    <message>
        <source>due today</source>
        <translation>heute dran</translation>
    </message>
    <message>
        <source>first week</source>
        <translation>erste Woche</translation>
    </message>
    <message>
        <source>ill</source>
        <translation>krank</translation>
    </message>
    <message>
        <source>injured</source>
        <translation>verletzt</translation>
    </message>
    <message>
        <source>next {day}</source>
        <translation>nächste {day}</translation>
    </message>
    <message>
        <source>no program</source>
        <translation>kein Plan</translation>
    </message>
    <message>
        <source>{count} trainees</source>
        <translation>{count} Personen</translation>
    </message>
    <message>
        <source>{days} since last</source>
        <translation>{days} seit dem letzten Mal</translation>
    </message>
</context>
<context>
    <name>RuleEditor</name>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>A step when</source>
        <translation>Schritt, wenn</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>Back off by percent</source>
        <translation>Zurücknehmen um Prozent</translation>
    </message>
    <message>
        <source>Follows another line</source>
        <translation>Folgt einer anderen Linie</translation>
    </message>
    <message>
        <source>How the sets relate</source>
        <translation>Wie die Sätze zueinander stehen</translation>
    </message>
    <message>
        <source>Let grow too:</source>
        <translation>Auch steigen lassen:</translation>
    </message>
    <message>
        <source>Lighter sets lower by percent</source>
        <translation>Leichtere Sätze niedriger um Prozent</translation>
    </message>
    <message>
        <source>Misses in a row</source>
        <translation>Verfehlte in Folge</translation>
    </message>
    <message>
        <source>Moves by</source>
        <translation>Folgt</translation>
    </message>
    <message>
        <source>Percent of the line followed</source>
        <translation>Prozent der Linie, der sie folgt</translation>
    </message>
    <message>
        <source>Repetitions over in the last set</source>
        <translation>Wiederholungen mehr im letzten Satz</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <source>So many times in a row</source>
        <translation>So oft in Folge</translation>
    </message>
    <message>
        <source>What gets easier after misses</source>
        <translation>Was nach Verfehltem leichter wird</translation>
    </message>
    <message>
        <source>at</source>
        <translation>zu</translation>
    </message>
    <message>
        <source>by</source>
        <translation>um</translation>
    </message>
    <message>
        <source>how sets relate</source>
        <translation>wie die Sätze zueinander stehen</translation>
    </message>
    <message>
        <source>in a row</source>
        <translation>in Folge</translation>
    </message>
    <message>
        <source>its own rule</source>
        <translation>eigene Regel</translation>
    </message>
    <message>
        <source>less</source>
        <translation>weniger</translation>
    </message>
    <message>
        <source>lower by</source>
        <translation>leichter um</translation>
    </message>
    <message>
        <source>misses in a row</source>
        <translation>verfehlten in Folge</translation>
    </message>
    <message>
        <source>range of the rule</source>
        <translation>Spanne der Regel</translation>
    </message>
    <message>
        <source>reps</source>
        <translation>Wdh</translation>
    </message>
    <message>
        <source>the main line</source>
        <translation>Hauptlinie</translation>
    </message>
    <message>
        <source>what follows misses</source>
        <translation>was auf Verfehltes folgt</translation>
    </message>
    <message>
        <source>what it follows</source>
        <translation>wem sie folgt</translation>
    </message>
    <message>
        <source>when it steps</source>
        <translation>wann sie steigt</translation>
    </message>
</context>
<context>
    <name>RuleExtras</name>
    <message>
        <source>% of body mass more</source>
        <translation>% des Körpergewichts mehr</translation>
    </message>
    <message>
        <source>A harder variation is at least</source>
        <translation>Eine schwerere Variante ist mindestens</translation>
    </message>
    <message>
        <source>At most so many days a week</source>
        <translation>Höchstens so viele Tage pro Woche</translation>
    </message>
    <message>
        <source>One more day a week after</source>
        <translation>Ein Tag mehr pro Woche nach</translation>
    </message>
    <message>
        <source>One more day a week after so many steps</source>
        <translation>Ein Tag mehr pro Woche nach so vielen Schritten</translation>
    </message>
    <message>
        <source>One more day a week after so many weeks</source>
        <translation>Ein Tag mehr pro Woche nach so vielen Wochen</translation>
    </message>
    <message>
        <source>Smallest step of the variation, in percent of body mass</source>
        <translation>Kleinster Schritt der Variante, in Prozent des Körpergewichts</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>one more day a week</source>
        <translation>ein Tag mehr pro Woche</translation>
    </message>
    <message>
        <source>smallest step</source>
        <translation>kleinster Schritt</translation>
    </message>
    <message>
        <source>steps or</source>
        <translation>Schritten oder</translation>
    </message>
    <message>
        <source>weeks, up to</source>
        <translation>Wochen, bis</translation>
    </message>
</context>
<context>
    <name>Rules</name>
    <message>
        <source>All sets together reach a total, however they fall; then it gets harder.</source>
        <translation>Alle Sätze zusammen erreichen eine Summe, gleich wie verteilt; dann wird es schwerer.</translation>
    </message>
    <message>
        <source>Each repetition gets slower first, then there are more, then it gets harder.</source>
        <translation>Erst wird jede Wiederholung langsamer, dann werden es mehr, dann wird es schwerer.</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Haltezeit</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Nothing grows: sets, repetitions and load stay until you change them.</source>
        <translation>Nichts steigt: Sätze, Wiederholungen und Last bleiben, bis sie geändert werden.</translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation>Wdh</translation>
    </message>
    <message>
        <source>Repetitions grow first, then a set is added, then the load takes a step.</source>
        <translation>Erst steigen Wiederholungen, dann kommt ein Satz dazu, dann macht die Last einen Schritt.</translation>
    </message>
    <message>
        <source>Repetitions grow to the top of the range, then the load takes a step.</source>
        <translation>Wiederholungen steigen bis ans obere Ende der Spanne, dann macht die Last einen Schritt.</translation>
    </message>
    <message>
        <source>Repetitions grow to the top of the range, then the variation gets harder.</source>
        <translation>Wiederholungen steigen bis ans obere Ende der Spanne, dann wird die Variante schwerer.</translation>
    </message>
    <message>
        <source>Seconds grow to the top of the range, then the load takes a step.</source>
        <translation>Sekunden steigen bis ans obere Ende der Spanne, dann macht die Last einen Schritt.</translation>
    </message>
    <message>
        <source>Seconds grow to the top of the range, then the variation gets harder.</source>
        <translation>Sekunden steigen bis ans obere Ende der Spanne, dann wird die Variante schwerer.</translation>
    </message>
    <message>
        <source>Sets</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <source>Tempo</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>The same sets and repetitions; the load grows each time all are done.</source>
        <translation>Gleiche Sätze und Wiederholungen; die Last steigt jedes Mal, wenn alle geschafft sind.</translation>
    </message>
    <message>
        <source>Total repetitions</source>
        <translation>Wdh insgesamt</translation>
    </message>
    <message>
        <source>Variation</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>What stands first grows first; the next one when it is full.</source>
        <translation>Was zuerst steht, steigt zuerst; das Nächste, wenn es voll ist.</translation>
    </message>
    <message>
        <source>a rule of your own</source>
        <translation>eine eigene Regel</translation>
    </message>
    <message>
        <source>a top set, then lighter</source>
        <translation>ein Topsatz, dann leichter</translation>
    </message>
    <message>
        <source>a total, split freely</source>
        <translation>eine Summe, frei verteilt</translation>
    </message>
    <message>
        <source>all alike</source>
        <translation>alle gleich</translation>
    </message>
    <message>
        <source>all sets are done as asked</source>
        <translation>alle Sätze wie vorgegeben sind</translation>
    </message>
    <message>
        <source>ascending to the last</source>
        <translation>ansteigend bis zum letzten</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>fest</translation>
    </message>
    <message>
        <source>hold, then a harder variation</source>
        <translation>Haltezeit, dann Variante</translation>
    </message>
    <message>
        <source>hold, then load</source>
        <translation>Haltezeit, dann Last</translation>
    </message>
    <message>
        <source>linear loading</source>
        <translation>linear steigern</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>matches the demand</source>
        <translation>passt sich an</translation>
    </message>
    <message>
        <source>one more is left in reserve than meant</source>
        <translation>eine mehr in Reserve bleibt als gemeint</translation>
    </message>
    <message>
        <source>repetitions</source>
        <translation>Wiederholungen</translation>
    </message>
    <message>
        <source>repetitions, sets, then load</source>
        <translation>Wiederholungen, Sätze, dann Last</translation>
    </message>
    <message>
        <source>repetitions, then a harder variation</source>
        <translation>Wiederholungen, dann Variante</translation>
    </message>
    <message>
        <source>repetitions, then load</source>
        <translation>Wiederholungen, dann Last</translation>
    </message>
    <message>
        <source>slow tempo first</source>
        <translation>erst langsames Tempo</translation>
    </message>
    <message>
        <source>starts again</source>
        <translation>beginnt neu</translation>
    </message>
    <message>
        <source>stays</source>
        <translation>bleibt</translation>
    </message>
    <message>
        <source>the last set goes over</source>
        <translation>der letzte Satz mehr bringt</translation>
    </message>
    <message>
        <source>the total is reached</source>
        <translation>die Summe erreicht ist</translation>
    </message>
    <message>
        <source>total repetitions</source>
        <translation>Wiederholungen insgesamt</translation>
    </message>
    <message>
        <source>variation</source>
        <translation>Variante</translation>
    </message>
</context>
<context>
    <name>SafeKeeping</name>
    <message>
        <source>1 other fact goes, comes back or changes</source>
        <translation>1 weitere Angabe entfällt, kommt wieder oder ändert sich</translation>
    </message>
    <message>
        <source>1 session</source>
        <translation>1 Einheit</translation>
    </message>
    <message>
        <source>1 trainee</source>
        <translation>1 Person</translation>
    </message>
    <message>
        <source>Going back to it would change:</source>
        <translation>Zu ihr zurückzugehen würde ändern:</translation>
    </message>
    <message>
        <source>In it: {trainees}, {sessions}, the last of {day}.</source>
        <translation>Darin, bis {day}: {trainees}, {sessions}.</translation>
    </message>
    <message>
        <source>In it: {trainees}, {sessions}.</source>
        <translation>Darin: {trainees}, {sessions}.</translation>
    </message>
    <message>
        <source>It holds the same as the present file.</source>
        <translation>Sie enthält dasselbe wie die jetzige Datei.</translation>
    </message>
    <message>
        <source>Programs change back.</source>
        <translation>Pläne ändern sich zurück.</translation>
    </message>
    <message>
        <source>The present file cannot be read, so it cannot be compared with it.</source>
        <translation>Die jetzige Datei lässt sich nicht lesen, also auch nicht damit vergleichen.</translation>
    </message>
    <message>
        <source>{count} other facts go, come back or change</source>
        <translation>{count} weitere Angaben entfallen, kommen wieder oder ändern sich</translation>
    </message>
    <message>
        <source>{count} sessions</source>
        <translation>{count} Einheiten</translation>
    </message>
    <message>
        <source>{count} trainees</source>
        <translation>{count} Personen</translation>
    </message>
    <message>
        <source>{sessions} as they were before</source>
        <translation>{sessions} wie sie vorher waren</translation>
    </message>
    <message>
        <source>{sessions} come back</source>
        <translation>{sessions} kommen wieder</translation>
    </message>
    <message>
        <source>{sessions} lost</source>
        <translation>{sessions} verloren</translation>
    </message>
</context>
<context>
    <name>SafeKeepingPanel</name>
    <message>
        <source>A copy of everything is made on closing, and kept for the last 7 days, 4 weeks and 12 months. The copies lie in {folder}. What is there now is copied before anything is put in its place.</source>
        <translation>Beim Schließen entsteht eine Kopie von allem; sie bleibt für die letzten 7 Tage, 4 Wochen und 12 Monate. Die Kopien liegen in {folder}. Was jetzt da ist, wird kopiert, bevor etwas an seine Stelle tritt.</translation>
    </message>
    <message>
        <source>Backups</source>
        <translation>Sicherungen</translation>
    </message>
    <message>
        <source>Backups, the newest first</source>
        <translation>Sicherungen, die neueste zuerst</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Go back to this backup</source>
        <translation>Zu dieser Sicherung zurück</translation>
    </message>
    <message>
        <source>There is no backup yet.</source>
        <translation>Noch gibt es keine Sicherung.</translation>
    </message>
</context>
<context>
    <name>Sentences</name>
    <message>
        <source>&quot;version&quot; is a whole number from 1, not {found!r}</source>
        <translation>&quot;version&quot; ist eine ganze Zahl ab 1, nicht {found!r}</translation>
    </message>
    <message>
        <source>1 to 50 sets, not {sets} - at `{path}.start.sets`</source>
        <translation>1 bis 50 Sätze, nicht {sets} - bei `{path}.start.sets`</translation>
    </message>
    <message>
        <source>1 to {most_days} days a week, not {days}</source>
        <translation>1 bis {most_days} Tage pro Woche, nicht {days}</translation>
    </message>
    <message>
        <source>; near it are {names}</source>
        <translation>; ähnlich sind {names}</translation>
    </message>
    <message>
        <source>A passphrase has at least {least_letters} letters, signs or spaces between them.</source>
        <translation>Eine Passphrase hat mindestens {least_letters} Buchstaben, Zeichen oder Leerzeichen dazwischen.</translation>
    </message>
    <message>
        <source>A {name} cannot be kept or removed by itself.</source>
        <translation>{name} lässt sich nicht für sich allein behalten oder entfernen.</translation>
    </message>
    <message>
        <source>Change the one that is there, or choose another.</source>
        <translation>Das Vorhandene ändern oder ein anderes wählen.</translation>
    </message>
    <message>
        <source>Check that its folder exists, that you may write there and that the disk is not full.</source>
        <translation>Prüfen, ob der Ordner existiert, ob dort geschrieben werden darf und ob der Datenträger nicht voll ist.</translation>
    </message>
    <message>
        <source>Check the disk.</source>
        <translation>Den Datenträger prüfen.</translation>
    </message>
    <message>
        <source>Check the name, or make a new data file.</source>
        <translation>Den Namen prüfen oder eine neue Datendatei anlegen.</translation>
    </message>
    <message>
        <source>Choose a file that was written as everything.</source>
        <translation>Eine Datei wählen, die mit allem geschrieben wurde.</translation>
    </message>
    <message>
        <source>Choose another backup.</source>
        <translation>Eine andere Sicherung wählen.</translation>
    </message>
    <message>
        <source>Choose another folder for backups.</source>
        <translation>Einen anderen Ordner für Sicherungen wählen.</translation>
    </message>
    <message>
        <source>Choose another name for the copy.</source>
        <translation>Einen anderen Namen für die Kopie wählen.</translation>
    </message>
    <message>
        <source>Data in memory belong to the thread that made them.</source>
        <translation>Daten im Speicher gehören dem Thread, der sie angelegt hat.</translation>
    </message>
    <message>
        <source>Do not go on with it; open the latest backup.</source>
        <translation>Nicht damit weiterarbeiten; die neueste Sicherung öffnen.</translation>
    </message>
    <message>
        <source>Drafted for {level}, {weeks} weeks, {minutes} minutes a session at most. {first}; repetitions or seconds grow before load or variation. Starts are light on purpose: set each trainee&apos;s own, or put an assessment first. {easier} The ranges are common practice. {caution}</source>
        <translation>Entworfen für {level}, {weeks} Wochen, höchstens {minutes} Minuten je Einheit. {first}; Wiederholungen oder Sekunden steigen vor Last oder Variante. Starts sind mit Absicht leicht: für jede Person eigene setzen oder einen Test voranstellen. {easier} Die Spannen sind gängige Praxis. {caution}</translation>
    </message>
    <message>
        <source>Each record needs an id and a revision from 1 on; see {name}[{place}].</source>
        <translation>Jeder Eintrag braucht eine id und eine revision ab 1; siehe {name}[{place}].</translation>
    </message>
    <message>
        <source>Every sixth week is a deload.</source>
        <translation>Jede sechste Woche ist eine Entlastungswoche.</translation>
    </message>
    <message>
        <source>Everybody in this file is on the roster already.</source>
        <translation>Alle in dieser Datei sind schon auf der Liste.</translation>
    </message>
    <message>
        <source>File exists</source>
        <translation>Die Datei gibt es schon</translation>
    </message>
    <message>
        <source>File too large</source>
        <translation>Die Datei ist zu groß</translation>
    </message>
    <message>
        <source>Five days</source>
        <translation>Fünf Tage</translation>
    </message>
    <message>
        <source>For healthy people: whoever has a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Für Gesunde: bei Erkrankung, Schmerz, frischer Verletzung oder zweifelhaften Gesundheitsfragen braucht es zuerst die Freigabe einer zugelassenen Fachperson.</translation>
    </message>
    <message>
        <source>Four days</source>
        <translation>Vier Tage</translation>
    </message>
    <message>
        <source>Friday</source>
        <translation>Freitag</translation>
    </message>
    <message>
        <source>Give the passphrase.</source>
        <translation>Die Passphrase angeben.</translation>
    </message>
    <message>
        <source>Give {value}.</source>
        <translation>Angeben: {value}.</translation>
    </message>
    <message>
        <source>Go back to a backup.</source>
        <translation>Zu einer Sicherung zurückgehen.</translation>
    </message>
    <message>
        <source>Go back to the latest backup.</source>
        <translation>Zur neuesten Sicherung zurückgehen.</translation>
    </message>
    <message>
        <source>Holds and harder variations come first</source>
        <translation>Halteübungen und schwerere Varianten kommen zuerst</translation>
    </message>
    <message>
        <source>Input/output error</source>
        <translation>Fehler beim Lesen oder Schreiben des Datenträgers</translation>
    </message>
    <message>
        <source>Install it: pip install &quot;rungwise[passphrase]&quot;</source>
        <translation>So installieren: pip install &quot;rungwise[passphrase]&quot;</translation>
    </message>
    <message>
        <source>Install the newer version of the program, or open a backup.</source>
        <translation>Die neuere Version von Rungwise installieren oder eine Sicherung öffnen.</translation>
    </message>
    <message>
        <source>Is a directory</source>
        <translation>Es ist ein Ordner</translation>
    </message>
    <message>
        <source>It cannot be written without the trainee: {problems}</source>
        <translation>Ohne die Person lässt sie sich nicht schreiben: {problems}</translation>
    </message>
    <message>
        <source>It was left as it is.</source>
        <translation>Sie bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>Monday</source>
        <translation>Montag</translation>
    </message>
    <message>
        <source>Name a data file.</source>
        <translation>Eine Datendatei nennen.</translation>
    </message>
    <message>
        <source>Name a new data file; everything of the file goes in there.</source>
        <translation>Eine neue Datendatei nennen; alles aus der Datei kommt dort hinein.</translation>
    </message>
    <message>
        <source>No days</source>
        <translation>Keine Tage</translation>
    </message>
    <message>
        <source>No deload is planned: for novices it is the coach&apos;s call.</source>
        <translation>Kein Deload ist geplant: beim Einstieg entscheidet der Coach.</translation>
    </message>
    <message>
        <source>No space left on device</source>
        <translation>Auf dem Datenträger ist kein Platz mehr</translation>
    </message>
    <message>
        <source>No such file or directory</source>
        <translation>Datei oder Ordner gibt es nicht</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Nothing was changed. Check the disk.</source>
        <translation>Nichts wurde geändert. Den Datenträger prüfen.</translation>
    </message>
    <message>
        <source>Nothing was changed. Open a backup instead.</source>
        <translation>Nichts wurde geändert. Stattdessen eine Sicherung öffnen.</translation>
    </message>
    <message>
        <source>One day</source>
        <translation>Ein Tag</translation>
    </message>
    <message>
        <source>Open the latest backup.</source>
        <translation>Die neueste Sicherung öffnen.</translation>
    </message>
    <message>
        <source>Operation not permitted</source>
        <translation>Nicht erlaubt</translation>
    </message>
    <message>
        <source>Permission denied</source>
        <translation>Keine Berechtigung</translation>
    </message>
    <message>
        <source>Read it again and repeat the change. Nothing was overwritten.</source>
        <translation>Noch einmal ansehen und die Änderung wiederholen. Nichts wurde überschrieben.</translation>
    </message>
    <message>
        <source>Read them again and repeat the change. Nothing was overwritten.</source>
        <translation>Noch einmal ansehen und die Änderung wiederholen. Nichts wurde überschrieben.</translation>
    </message>
    <message>
        <source>Read-only file system</source>
        <translation>Der Datenträger ist schreibgeschützt</translation>
    </message>
    <message>
        <source>Remove or correct those sessions first.</source>
        <translation>Erst diese Einheiten entfernen oder berichtigen.</translation>
    </message>
    <message>
        <source>Retire the exercise instead; its record stays.</source>
        <translation>Die Übung stattdessen stilllegen; ihre Aufzeichnungen bleiben.</translation>
    </message>
    <message>
        <source>SQLite {there} is too old: the data need {least} or newer.</source>
        <translation>SQLite {there} ist zu alt: die Daten brauchen {least} oder neuer.</translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation>Samstag</translation>
    </message>
    <message>
        <source>Save the {what} first.</source>
        <translation>Erst {what} speichern.</translation>
    </message>
    <message>
        <source>Several words that you can remember are good.</source>
        <translation>Mehrere Wörter, die sich merken lassen, sind gut.</translation>
    </message>
    <message>
        <source>Six days</source>
        <translation>Sechs Tage</translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation>Sonntag</translation>
    </message>
    <message>
        <source>The coach&apos;s settings were changed elsewhere since they were read.</source>
        <translation>Die Einstellungen wurden anderswo geändert, seit sie gelesen wurden.</translation>
    </message>
    <message>
        <source>The factor on sets is above 0 and at most 1, not {factor}.</source>
        <translation>Der Faktor auf Sätze liegt über 0 und ist höchstens 1, nicht {factor}.</translation>
    </message>
    <message>
        <source>The folder {folder} cannot be made: {strerror}.</source>
        <translation>Der Ordner {folder} lässt sich nicht anlegen: {strerror}.</translation>
    </message>
    <message>
        <source>The key of an exercise stays as it is: {key!r}.</source>
        <translation>Der Schlüssel einer Übung bleibt, wie er ist: {key!r}.</translation>
    </message>
    <message>
        <source>The large exercises come first</source>
        <translation>Die großen Übungen kommen zuerst</translation>
    </message>
    <message>
        <source>The last day, {last}, is before the first, {first}.</source>
        <translation>Der letzte Tag, {last}, liegt vor dem ersten, {first}.</translation>
    </message>
    <message>
        <source>The library for files with a passphrase (sqlcipher3) is not installed.</source>
        <translation>Die Bibliothek für Dateien mit Passphrase (sqlcipher3) ist nicht installiert.</translation>
    </message>
    <message>
        <source>The line of {exercise} belongs to another trainee.</source>
        <translation>Die Linie {exercise} gehört einer anderen Person.</translation>
    </message>
    <message>
        <source>The line of {exercise} was trained in sessions: {count}.</source>
        <translation>Die Linie {exercise} wurde in Einheiten trainiert: {count}.</translation>
    </message>
    <message>
        <source>The order on a day counts from 0, not {entry}.</source>
        <translation>Die Reihenfolge an einem Tag zählt ab 0, nicht {entry}.</translation>
    </message>
    <message>
        <source>The passphrase does not open {file}.</source>
        <translation>Die Passphrase öffnet {file} nicht.</translation>
    </message>
    <message>
        <source>The record breaks a rule of the data: {origin}.</source>
        <translation>Der Eintrag verletzt eine Regel der Daten: {origin}.</translation>
    </message>
    <message>
        <source>The record holds what cannot be kept: {error}.</source>
        <translation>Der Eintrag enthält, was sich nicht behalten lässt: {error}.</translation>
    </message>
    <message>
        <source>The span ends before it begins: choose a later last day.</source>
        <translation>Der Zeitraum endet, bevor er beginnt: einen späteren letzten Tag wählen.</translation>
    </message>
    <message>
        <source>The uncertainty of a start is a fraction from 0 to 1, not {plus_minus}.</source>
        <translation>Die Unsicherheit eines Starts ist ein Anteil von 0 bis 1, nicht {plus_minus}.</translation>
    </message>
    <message>
        <source>There are records in the data file already.</source>
        <translation>In der Datendatei gibt es schon Aufzeichnungen.</translation>
    </message>
    <message>
        <source>There is already {record}.</source>
        <translation>Schon vorhanden: {record}.</translation>
    </message>
    <message>
        <source>There is no exercise called {key!r}.</source>
        <translation>Es gibt keine Übung namens {key!r}.</translation>
    </message>
    <message>
        <source>There is no file {path}.</source>
        <translation>Es gibt keine Datei {path}.</translation>
    </message>
    <message>
        <source>There is no {kind} with the number {identity}.</source>
        <translation>Es gibt nichts mit der Nummer {identity}: {kind}.</translation>
    </message>
    <message>
        <source>There is no {what} called {value!r}.</source>
        <translation>Nicht vorhanden: {what} {value!r}.</translation>
    </message>
    <message>
        <source>There is no {what} with the number {value}.</source>
        <translation>Nicht vorhanden: {what} mit der Nummer {value}.</translation>
    </message>
    <message>
        <source>This {kind} is already there.</source>
        <translation>Schon vorhanden: {kind}.</translation>
    </message>
    <message>
        <source>This {kind} was changed elsewhere since it was read.</source>
        <translation>Anderswo geändert, seit es gelesen wurde: {kind}.</translation>
    </message>
    <message>
        <source>This {kind} was removed elsewhere since it was read.</source>
        <translation>Anderswo entfernt, seit es gelesen wurde: {kind}.</translation>
    </message>
    <message>
        <source>Three days</source>
        <translation>Drei Tage</translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation>Donnerstag</translation>
    </message>
    <message>
        <source>Try it again. If it is right, the file is damaged: go back to a backup.</source>
        <translation>Noch einmal versuchen. Stimmt sie, ist die Datei beschädigt: zu einer Sicherung zurückgehen.</translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation>Dienstag</translation>
    </message>
    <message>
        <source>Two days</source>
        <translation>Zwei Tage</translation>
    </message>
    <message>
        <source>Use a Python that brings a newer SQLite.</source>
        <translation>Ein Python mit neuerem SQLite verwenden.</translation>
    </message>
    <message>
        <source>Version {version} cannot be reached: rows of {tables} refer to missing ones.</source>
        <translation>Version {version} ist nicht erreichbar: Zeilen von {tables} verweisen auf fehlende.</translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation>Mittwoch</translation>
    </message>
    <message>
        <source>What was written in place of the file is not the same: {listed}</source>
        <translation>Was an Stelle der Datei geschrieben wurde, ist nicht dasselbe: {listed}</translation>
    </message>
    <message>
        <source>a body mass for {day}</source>
        <translation>ein Körpergewicht für {day}</translation>
    </message>
    <message>
        <source>a body mass is 10 to 500 kg (22 to 1102 lb)</source>
        <translation>ein Körpergewicht ist 10 bis 500 kg (22 bis 1102 lb)</translation>
    </message>
    <message>
        <source>a deload every 1 to 52 weeks, or null - at `$.program.deload_every`</source>
        <translation>ein Deload alle 1 bis 52 Wochen, oder null - bei `$.program.deload_every`</translation>
    </message>
    <message>
        <source>a following line asks above 0 to 100 %, not {percent}</source>
        <translation>eine folgende Linie verlangt über 0 bis 100 %, nicht {percent}</translation>
    </message>
    <message>
        <source>a line of {exercise} called {name!r}</source>
        <translation>eine Linie {exercise} namens {name!r}</translation>
    </message>
    <message>
        <source>a list of equipment from {day}</source>
        <translation>eine Ausstattung ab {day}</translation>
    </message>
    <message>
        <source>a load {times} times that of the other lines: is a decimal mark missing?</source>
        <translation>eine Last vom {times}-Fachen der anderen Zeilen: fehlt ein Dezimalzeichen?</translation>
    </message>
    <message>
        <source>a load, but neither repetitions nor seconds</source>
        <translation>eine Last, aber weder Wiederholungen noch Sekunden</translation>
    </message>
    <message>
        <source>a meaning of {text!r}</source>
        <translation>eine Bedeutung von {text!r}</translation>
    </message>
    <message>
        <source>a novice</source>
        <translation>den Einstieg</translation>
    </message>
    <message>
        <source>a phase lasts 1 to 104 weeks, not {weeks} - at `{path}.weeks`</source>
        <translation>eine Phase dauert 1 bis 104 Wochen, nicht {weeks} - bei `{path}.weeks`</translation>
    </message>
    <message>
        <source>a program called {name}</source>
        <translation>ein Plan namens {name}</translation>
    </message>
    <message>
        <source>a program is assigned from {start} on already; remove that or start later</source>
        <translation>ab {start} ist schon ein Plan zugewiesen; diesen entfernen oder später beginnen</translation>
    </message>
    <message>
        <source>a program needs a name - at `$.program.name`</source>
        <translation>ein Plan braucht einen Namen - bei `$.program.name`</translation>
    </message>
    <message>
        <source>a program needs at least one phase - at `$.program.phases`</source>
        <translation>ein Plan braucht mindestens eine Phase - bei `$.program.phases`</translation>
    </message>
    <message>
        <source>a rest is 0 to 3600 seconds - at `{path}.rest_s`</source>
        <translation>eine Pause ist 0 bis 3600 Sekunden - bei `{path}.rest_s`</translation>
    </message>
    <message>
        <source>a rule counts repetitions or seconds held, not both</source>
        <translation>eine Regel zählt Wiederholungen oder gehaltene Sekunden, nicht beides</translation>
    </message>
    <message>
        <source>a start above 0 to 100 % of the maximum, not {start_percent}</source>
        <translation>ein Start über 0 bis 100 % des Maximums, nicht {start_percent}</translation>
    </message>
    <message>
        <source>a trainee called {name}</source>
        <translation>eine Person namens {name}</translation>
    </message>
    <message>
        <source>a variable stands twice in the rule; each may stand once</source>
        <translation>eine Größe steht zweimal in der Regel; jede darf einmal stehen</translation>
    </message>
    <message>
        <source>a variation is named, not numbered</source>
        <translation>eine Variante hat einen Namen, keine Zahl</translation>
    </message>
    <message>
        <source>a weekday is 0 (Monday) to 6 or null, not {weekday} - at `{at}.weekday`</source>
        <translation>ein Wochentag ist 0 (Montag) bis 6 oder null, nicht {weekday} - bei `{at}.weekday`</translation>
    </message>
    <message>
        <source>a well-equipped room</source>
        <translation>ein gut ausgestatteter Raum</translation>
    </message>
    <message>
        <source>absence</source>
        <translation>Abwesenheit</translation>
    </message>
    <message>
        <source>activity</source>
        <translation>Aktivität</translation>
    </message>
    <message>
        <source>an activity needs minutes and effort (0 to 10)</source>
        <translation>eine Aktivität braucht Minuten und Anstrengung (0 bis 10)</translation>
    </message>
    <message>
        <source>an advanced trainee</source>
        <translation>Erfahrene</translation>
    </message>
    <message>
        <source>an estimate needs 1 to 15 repetitions, those in reserve included</source>
        <translation>eine Schätzung braucht 1 bis 15 Wiederholungen, die in Reserve mitgezählt</translation>
    </message>
    <message>
        <source>an exercise with the key {key!r}</source>
        <translation>eine Übung mit dem Schlüssel {key!r}</translation>
    </message>
    <message>
        <source>an intermediate trainee</source>
        <translation>die Mittelstufe</translation>
    </message>
    <message>
        <source>another activity and an exercise cannot share a line</source>
        <translation>eine andere Aktivität und eine Übung können nicht in einer Zeile stehen</translation>
    </message>
    <message>
        <source>another exercise was done</source>
        <translation>eine andere Übung wurde gemacht</translation>
    </message>
    <message>
        <source>arms and calves</source>
        <translation>Arme und Waden</translation>
    </message>
    <message>
        <source>assignment</source>
        <translation>Zuweisung</translation>
    </message>
    <message>
        <source>at least one repetition or second - at `{path}.start`</source>
        <translation>mindestens eine Wiederholung oder Sekunde - bei `{path}.start`</translation>
    </message>
    <message>
        <source>avoid {text!r}: no exercise has that; name an exercise, a muscle, or a pattern ({allowed})</source>
        <translation>{text!r} meiden: keine Übung hat das; eine Übung, einen Muskel oder ein Muster nennen ({allowed})</translation>
    </message>
    <message>
        <source>back off by more than 0 and at most 50 %, not {percent}</source>
        <translation>um mehr als 0 und höchstens 50 % zurücknehmen, nicht {percent}</translation>
    </message>
    <message>
        <source>barbell, bench and bar</source>
        <translation>Langhantel, Bank und Stange</translation>
    </message>
    <message>
        <source>body mass</source>
        <translation>Körpergewicht</translation>
    </message>
    <message>
        <source>bodyweight, but the exercise is loaded by weights</source>
        <translation>Körpergewicht, aber die Übung wird mit Gewichten belastet</translation>
    </message>
    <message>
        <source>broken quotation, the rest was not read ({error})</source>
        <translation>Anführungszeichen fehlt, der Rest wurde nicht gelesen ({error})</translation>
    </message>
    <message>
        <source>carry</source>
        <translation>Tragen</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>Deload</translation>
    </message>
    <message>
        <source>dismissed caution</source>
        <translation>zurückgestellter Hinweis</translation>
    </message>
    <message>
        <source>dumbbells and a bench</source>
        <translation>Kurzhanteln und eine Bank</translation>
    </message>
    <message>
        <source>each weekday may be named once</source>
        <translation>jeder Wochentag darf einmal genannt sein</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>Ausstattung</translation>
    </message>
    <message>
        <source>exercise</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>frequency: 1 to 7 days a week, not {most}</source>
        <translation>Häufigkeit: 1 bis 7 Tage pro Woche, nicht {most}</translation>
    </message>
    <message>
        <source>frequency: give a number of steps or of weeks</source>
        <translation>Häufigkeit: eine Zahl von Schritten oder Wochen angeben</translation>
    </message>
    <message>
        <source>give reps or hold_s, one of them - at `{path}.start`</source>
        <translation>reps oder hold_s angeben, eines davon - bei `{path}.start`</translation>
    </message>
    <message>
        <source>goal</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>held back with line {bad_parts}, {why_held}</source>
        <translation>zurückgehalten mit Zeile {bad_parts}, {why_held}</translation>
    </message>
    <message>
        <source>hinge</source>
        <translation>Hüftbeuge</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>Haltezeit</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Linie</translation>
    </message>
    <message>
        <source>line 1 must name the columns, and there is no {missing} among them: a log has the columns {columns}</source>
        <translation>Zeile 1 muss die Spalten nennen, und darunter fehlt {missing}: ein Protokoll hat die Spalten {columns}</translation>
    </message>
    <message>
        <source>line {line} says {before}</source>
        <translation>Zeile {line} sagt {before}</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>lunge</source>
        <translation>Ausfallschritt</translation>
    </message>
    <message>
        <source>misses in a row: 1 to 5, not {misses}</source>
        <translation>Verfehlte in Folge: 1 bis 5, nicht {misses}</translation>
    </message>
    <message>
        <source>no date</source>
        <translation>kein Datum</translation>
    </message>
    <message>
        <source>no date: write it as 2026-11-30</source>
        <translation>kein Datum: als 2026-11-30 schreiben</translation>
    </message>
    <message>
        <source>no equipment</source>
        <translation>ohne Ausstattung</translation>
    </message>
    <message>
        <source>no load is light enough: the lightest is {lowest:g} kg</source>
        <translation>keine Last ist leicht genug: die leichteste ist {lowest:g} kg</translation>
    </message>
    <message>
        <source>no load: read as none</source>
        <translation>keine Last: als keine gelesen</translation>
    </message>
    <message>
        <source>no repetitions and no seconds: what was done?</source>
        <translation>keine Wiederholungen und keine Sekunden: was wurde gemacht?</translation>
    </message>
    <message>
        <source>no unit: write kg or lb into the column &apos;unit&apos;</source>
        <translation>keine Maßeinheit: kg oder lb in die Spalte &apos;unit&apos; schreiben</translation>
    </message>
    <message>
        <source>nothing to record in this line</source>
        <translation>nichts aufzuzeichnen in dieser Zeile</translation>
    </message>
    <message>
        <source>own equipment</source>
        <translation>eigene Ausstattung</translation>
    </message>
    <message>
        <source>press</source>
        <translation>Überkopfdrücken</translation>
    </message>
    <message>
        <source>program</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>pull-up</source>
        <translation>Klimmzug</translation>
    </message>
    <message>
        <source>push</source>
        <translation>Drücken</translation>
    </message>
    <message>
        <source>remembered name</source>
        <translation>gemerkter Name</translation>
    </message>
    <message>
        <source>repetitions in reserve: 0 to 10, not {target_rir}</source>
        <translation>Wiederholungen in Reserve: 0 bis 10, nicht {target_rir}</translation>
    </message>
    <message>
        <source>repetitions or seconds, not both</source>
        <translation>Wiederholungen oder Sekunden, nicht beides</translation>
    </message>
    <message>
        <source>repetitions over: 1 to 10, not {over}</source>
        <translation>Wiederholungen darüber: 1 bis 10, nicht {over}</translation>
    </message>
    <message>
        <source>reps</source>
        <translation>Wdh</translation>
    </message>
    <message>
        <source>row</source>
        <translation>Rudern</translation>
    </message>
    <message>
        <source>session</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>session change</source>
        <translation>Änderung einer Einheit</translation>
    </message>
    <message>
        <source>sessions in a row: 1 to 10, not {sessions}</source>
        <translation>Einheiten in Folge: 1 bis 10, nicht {sessions}</translation>
    </message>
    <message>
        <source>set scheme: more than 0 and at most 50 %, not {percent}</source>
        <translation>Satzschema: mehr als 0 und höchstens 50 %, nicht {percent}</translation>
    </message>
    <message>
        <source>set {number} of {exercise} stands in line {line} already</source>
        <translation>Satz {number} von {exercise} steht schon in Zeile {line}</translation>
    </message>
    <message>
        <source>sets</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <source>settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>size</source>
        <translation>Muskelaufbau</translation>
    </message>
    <message>
        <source>skill</source>
        <translation>Können</translation>
    </message>
    <message>
        <source>so that the exercise is not judged by a part of its sets</source>
        <translation>damit die Übung nicht nach einem Teil ihrer Sätze bewertet wird</translation>
    </message>
    <message>
        <source>squat</source>
        <translation>Kniebeuge</translation>
    </message>
    <message>
        <source>strength</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>tempo</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>the column {cell!r} is not read</source>
        <translation>die Spalte {cell!r} wird nicht gelesen</translation>
    </message>
    <message>
        <source>the column {cell!r} is not read; did you mean {near!r}?</source>
        <translation>die Spalte {cell!r} wird nicht gelesen; ist {near!r} gemeint?</translation>
    </message>
    <message>
        <source>the column {cell!r} stands twice in the heading</source>
        <translation>die Spalte {cell!r} steht zweimal in der Kopfzeile</translation>
    </message>
    <message>
        <source>the effective load is not known: give a load, or the body mass</source>
        <translation>die wirksame Last ist nicht bekannt: eine Last oder das Körpergewicht angeben</translation>
    </message>
    <message>
        <source>the file is empty: the first line names the columns</source>
        <translation>die Datei ist leer: die erste Zeile nennt die Spalten</translation>
    </message>
    <message>
        <source>the rest from line {line} on was not read: broken quotation ({error})</source>
        <translation>der Rest ab Zeile {line} wurde nicht gelesen: Anführungszeichen fehlt ({error})</translation>
    </message>
    <message>
        <source>the rule counts repetitions: test with repetitions</source>
        <translation>die Regel zählt Wiederholungen: mit Wiederholungen testen</translation>
    </message>
    <message>
        <source>the rule counts {counted}, the start does not - at `{path}.rule.ranges`</source>
        <translation>die Regel zählt {counted}, der Start nicht - bei `{path}.rule.ranges`</translation>
    </message>
    <message>
        <source>the variation tested is not on this trainee&apos;s scale</source>
        <translation>die getestete Variante gehört nicht zur Reihe dieser Person</translation>
    </message>
    <message>
        <source>there is another program called {name!r} already; rename one of the two</source>
        <translation>es gibt schon einen anderen Plan namens {name!r}; einen der beiden umbenennen</translation>
    </message>
    <message>
        <source>there is no exercise called {name!r}{hint}</source>
        <translation>keine Übung heißt {name!r}{hint}</translation>
    </message>
    <message>
        <source>there is no program {program!r}: its sessions are taken without it</source>
        <translation>es gibt keinen Plan {program!r}: seine Einheiten werden ohne ihn übernommen</translation>
    </message>
    <message>
        <source>there is no trainee called {name!r}{hint}</source>
        <translation>niemand heißt {name!r}{hint}</translation>
    </message>
    <message>
        <source>these exercises are not in the catalogue: {listed}</source>
        <translation>diese Übungen sind nicht im Katalog: {listed}</translation>
    </message>
    <message>
        <source>this is no JSON ({error})</source>
        <translation>das ist kein JSON ({error})</translation>
    </message>
    <message>
        <source>this is no text file: a training log is a table of text in UTF-8</source>
        <translation>das ist keine Textdatei: ein Trainingsprotokoll ist eine Texttabelle in UTF-8</translation>
    </message>
    <message>
        <source>this is no {schema} file: it does not begin with &quot;schema&quot;: &quot;{schema}&quot;</source>
        <translation>das ist keine {schema}-Datei: sie beginnt nicht mit &quot;schema&quot;: &quot;{schema}&quot;</translation>
    </message>
    <message>
        <source>this {schema} file has version {found}; this program reads up to {version}: update the program</source>
        <translation>diese {schema}-Datei hat Version {found}; Rungwise liest hier bis {version}: Rungwise erneuern</translation>
    </message>
    <message>
        <source>trainee</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>trunk</source>
        <translation>Rumpf</translation>
    </message>
    <message>
        <source>unknown field `{key}` at `{path}`: allowed are {allowed}</source>
        <translation>unbekanntes Feld `{key}` bei `{path}`: erlaubt sind {allowed}</translation>
    </message>
    <message>
        <source>variation</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>variation: give easiest and hardest, not floor and ceiling</source>
        <translation>Variante: leichteste und schwerste angeben, nicht Untergrenze und Obergrenze</translation>
    </message>
    <message>
        <source>weekdays are 0 (Monday) to 6 (Sunday)</source>
        <translation>Wochentage sind 0 (Montag) bis 6 (Sonntag)</translation>
    </message>
    <message>
        <source>what was copied is no part of a program: {error}</source>
        <translation>was kopiert wurde, ist kein Teil eines Plans: {error}</translation>
    </message>
    <message>
        <source>which exercise?</source>
        <translation>welche Übung?</translation>
    </message>
    <message>
        <source>which exercise? - at `{path}.exercise`</source>
        <translation>welche Übung? - bei `{path}.exercise`</translation>
    </message>
    <message>
        <source>who? choose a column, or whose all lines are</source>
        <translation>wer? eine Spalte wählen, oder von wem alle Zeilen sind</translation>
    </message>
    <message>
        <source>who? the line names no trainee</source>
        <translation>wer? die Zeile nennt keine Person</translation>
    </message>
    <message>
        <source>{cells} cells for {columns} columns: put numbers and texts that hold the separator into double quotation marks</source>
        <translation>{cells} Zellen für {columns} Spalten: Zahlen und Texte mit dem Trennzeichen in doppelte Anführungszeichen setzen</translation>
    </message>
    <message>
        <source>{days} days a week need as many weekdays, not {value}</source>
        <translation>{days} Tage pro Woche brauchen ebenso viele Wochentage, nicht {value}</translation>
    </message>
    <message>
        <source>{days}, {equipment}: {aim}</source>
        <translation>{days}, {equipment}: {aim}</translation>
    </message>
    <message>
        <source>{equation!r} is no equation: allowed are {listed}.</source>
        <translation>{equation!r} ist keine Formel: erlaubt sind {listed}.</translation>
    </message>
    <message>
        <source>{exercise}</source>
        <translation>{exercise}</translation>
    </message>
    <message>
        <source>{exercise} is already recorded on {day}, with other sets; change it in the session itself</source>
        <translation>{exercise} ist am {day} schon aufgezeichnet, mit anderen Sätzen; in der Einheit selbst ändern</translation>
    </message>
    <message>
        <source>{exercise} is counted: give repetitions, not seconds</source>
        <translation>{exercise} wird gezählt: Wiederholungen angeben, nicht Sekunden</translation>
    </message>
    <message>
        <source>{exercise} is held: give seconds, not repetitions</source>
        <translation>{exercise} wird gehalten: Sekunden angeben, nicht Wiederholungen</translation>
    </message>
    <message>
        <source>{file} cannot be read or written: {why}.</source>
        <translation>{file} lässt sich nicht lesen oder schreiben: {why}.</translation>
    </message>
    <message>
        <source>{file} changed on the disk though nobody wrote to it.</source>
        <translation>{file} hat sich auf dem Datenträger geändert, obwohl niemand hineinschrieb.</translation>
    </message>
    <message>
        <source>{file} has a passphrase (or it is no data file of this program).</source>
        <translation>{file} hat eine Passphrase (oder ist keine Datendatei von Rungwise).</translation>
    </message>
    <message>
        <source>{file} has more than {most_lines} lines: split it</source>
        <translation>{file} hat mehr als {most_lines} Zeilen: bitte teilen</translation>
    </message>
    <message>
        <source>{file} holds no sheet with cells</source>
        <translation>{file} enthält kein Tabellenblatt mit Zellen</translation>
    </message>
    <message>
        <source>{file} is a data file in use: a copy in its place would destroy it.</source>
        <translation>{file} ist eine Datendatei in Gebrauch: eine Kopie an ihrer Stelle würde sie zerstören.</translation>
    </message>
    <message>
        <source>{file} is a workbook of an old kind, or locked by a password: save it as .xlsx without a password, or as CSV</source>
        <translation>{file} ist eine Arbeitsmappe alter Art oder durch ein Passwort gesperrt: als .xlsx ohne Passwort oder als CSV speichern</translation>
    </message>
    <message>
        <source>{file} is an archive, not a workbook (.xlsx)</source>
        <translation>{file} ist ein Archiv, keine Arbeitsmappe (.xlsx)</translation>
    </message>
    <message>
        <source>{file} is damaged (it changed on the disk though nobody wrote to it); no copy was made of it.</source>
        <translation>{file} ist beschädigt (sie hat sich auf dem Datenträger geändert, obwohl niemand hineinschrieb); keine Kopie wurde davon gemacht.</translation>
    </message>
    <message>
        <source>{file} is damaged ({problems}); no copy was made of it.</source>
        <translation>{file} ist beschädigt ({problems}); keine Kopie wurde davon gemacht.</translation>
    </message>
    <message>
        <source>{file} is damaged: a value in it cannot be read.</source>
        <translation>{file} ist beschädigt: ein Wert darin lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>{file} is damaged: its beginning is missing.</source>
        <translation>{file} ist beschädigt: der Anfang fehlt.</translation>
    </message>
    <message>
        <source>{file} is damaged: {problems}</source>
        <translation>{file} ist beschädigt: {problems}</translation>
    </message>
    <message>
        <source>{file} is empty</source>
        <translation>{file} ist leer</translation>
    </message>
    <message>
        <source>{file} is neither a program nor a trainee file of this program, nor a table</source>
        <translation>{file} ist weder ein Plan noch eine Personendatei von Rungwise noch eine Tabelle</translation>
    </message>
    <message>
        <source>{file} is no table: it is neither text (CSV) nor a workbook (.xlsx)</source>
        <translation>{file} ist keine Tabelle: weder Text (CSV) noch eine Arbeitsmappe (.xlsx)</translation>
    </message>
    <message>
        <source>{file} is no text</source>
        <translation>{file} ist kein Text</translation>
    </message>
    <message>
        <source>{file} is no training log: {size} MB are too many</source>
        <translation>{file} ist kein Trainingsprotokoll: {size} MB sind zu viel</translation>
    </message>
    <message>
        <source>{file} is not a data file of this program.</source>
        <translation>{file} ist keine Datendatei von Rungwise.</translation>
    </message>
    <message>
        <source>{file} is too large for a {schema} file</source>
        <translation>{file} ist zu groß für eine {schema}-Datei</translation>
    </message>
    <message>
        <source>{file} is too large for notes: at most 1 MB</source>
        <translation>{file} ist zu groß für Notizen: höchstens 1 MB</translation>
    </message>
    <message>
        <source>{file} is too large: {size} MB, at most 200</source>
        <translation>{file} ist zu groß: {size} MB, höchstens 200</translation>
    </message>
    <message>
        <source>{file} unpacks to {unpacked} MB: that is no training log</source>
        <translation>{file} wird entpackt {unpacked} MB groß: das ist kein Trainingsprotokoll</translation>
    </message>
    <message>
        <source>{file} was written by a newer version of this program (its data have version {version}, this program knows up to {newest}).</source>
        <translation>{file} wurde von einer neueren Version von Rungwise geschrieben (ihre Daten haben Version {version}, bekannt ist hier bis {newest}).</translation>
    </message>
    <message>
        <source>{file}: each trainee needs a name of their own - at `$.trainees[{number}].trainee.name`</source>
        <translation>{file}: jede Person braucht einen eigenen Namen - bei `$.trainees[{number}].trainee.name`</translation>
    </message>
    <message>
        <source>{file}: {error}</source>
        <translation>{file}: {error}</translation>
    </message>
    <message>
        <source>{grams} loads for {count} sets</source>
        <translation>{grams} Lasten für {count} Sätze</translation>
    </message>
    <message>
        <source>{kilograms:g} kg are already recorded on {day}</source>
        <translation>{kilograms:g} kg sind am {day} schon aufgezeichnet</translation>
    </message>
    <message>
        <source>{least_minutes} to {most_minutes} minutes a session, not {minutes}</source>
        <translation>{least_minutes} bis {most_minutes} Minuten je Einheit, nicht {minutes}</translation>
    </message>
    <message>
        <source>{listed} and no {another}</source>
        <translation>{listed} und {another}</translation>
    </message>
    <message>
        <source>{load_g} g is not a load: allowed is -{max_load_g} to {max_load_g} g</source>
        <translation>{load_g} g ist keine Last: erlaubt ist -{max_load_g} bis {max_load_g} g</translation>
    </message>
    <message>
        <source>{match!r} is no unit: allowed are kg and lb</source>
        <translation>{match!r} ist keine Maßeinheit: erlaubt sind kg und lb</translation>
    </message>
    <message>
        <source>{name} cannot be read: {value}</source>
        <translation>{name} lässt sich nicht lesen: {value}</translation>
    </message>
    <message>
        <source>{name} has more than {most_lines} lines: split it</source>
        <translation>{name} hat mehr als {most_lines} Zeilen: bitte teilen</translation>
    </message>
    <message>
        <source>{name} has no training day yet; it needs at least one</source>
        <translation>{name} hat noch keinen Trainingstag; nötig ist mindestens einer</translation>
    </message>
    <message>
        <source>{name} has no variation {text!r}{hint}</source>
        <translation>{name} hat keine Variante {text!r}{hint}</translation>
    </message>
    <message>
        <source>{name} holds declarations that no workbook needs: it is not read</source>
        <translation>{name} enthält Deklarationen, die keine Arbeitsmappe braucht: wird nicht gelesen</translation>
    </message>
    <message>
        <source>{name} is damaged: {origin}.</source>
        <translation>{name} ist beschädigt: {origin}.</translation>
    </message>
    <message>
        <source>{name} is needed: uses as {what}: {count}.</source>
        <translation>{name} wird gebraucht: Verwendungen als {what}: {count}.</translation>
    </message>
    <message>
        <source>{name} is there already, exactly like this.</source>
        <translation>{name} ist schon da, genau so.</translation>
    </message>
    <message>
        <source>{name}, line {number}: a cell of more than {most_letters} letters</source>
        <translation>{name}, Zeile {number}: eine Zelle mit mehr als {most_letters} Buchstaben</translation>
    </message>
    <message>
        <source>{name}, line {number}: {cells} columns; at most {most_columns} are read</source>
        <translation>{name}, Zeile {number}: {cells} Spalten; höchstens {most_columns} werden gelesen</translation>
    </message>
    <message>
        <source>{name}: a floor lies above the ceiling {ceiling}</source>
        <translation>{name}: eine Untergrenze liegt über der Obergrenze {ceiling}</translation>
    </message>
    <message>
        <source>{name}: at most {most_text} characters, not {text}.</source>
        <translation>{name}: höchstens {most_text} Zeichen, nicht {text}.</translation>
    </message>
    <message>
        <source>{name}: easiest and hardest belong to a variation</source>
        <translation>{name}: leichteste und schwerste gehören zu einer Variante</translation>
    </message>
    <message>
        <source>{name}: every floor is at least 1</source>
        <translation>{name}: jede Untergrenze ist mindestens 1</translation>
    </message>
    <message>
        <source>{name}: give clean repetitions or seconds.</source>
        <translation>{name}: saubere Wiederholungen oder Sekunden angeben.</translation>
    </message>
    <message>
        <source>{name}: holds a character that is no text.</source>
        <translation>{name}: enthält ein Zeichen, das kein Text ist.</translation>
    </message>
    <message>
        <source>{name}: name at least one direct muscle.</source>
        <translation>{name}: mindestens einen direkten Muskel nennen.</translation>
    </message>
    <message>
        <source>{name}: the ceiling {ceiling} is below the floor {floor}</source>
        <translation>{name}: die Obergrenze {ceiling} liegt unter der Untergrenze {floor}</translation>
    </message>
    <message>
        <source>{name}: the ceiling {ceiling} is not on the grid of {floor} in steps of {increment}</source>
        <translation>{name}: die Obergrenze {ceiling} liegt nicht im Raster ab {floor} in Schritten von {increment}</translation>
    </message>
    <message>
        <source>{name}: the floor is at least 1, not {floor}</source>
        <translation>{name}: die Untergrenze ist mindestens 1, nicht {floor}</translation>
    </message>
    <message>
        <source>{name}: the increment is at least 1, not {increment}</source>
        <translation>{name}: der Schritt ist mindestens 1, nicht {increment}</translation>
    </message>
    <message>
        <source>{name}: the side is left, right or empty, not {side!r}.</source>
        <translation>{name}: die Seite ist left, right oder leer, nicht {side!r}.</translation>
    </message>
    <message>
        <source>{name}: there is no exercise {exercise!r}</source>
        <translation>{name}: es gibt keine Übung {exercise!r}</translation>
    </message>
    <message>
        <source>{name}: there is no exercise {listed}</source>
        <translation>{name}: es gibt keine Übung {listed}</translation>
    </message>
    <message>
        <source>{name}: there is no program {program!r}; import it first</source>
        <translation>{name}: es gibt keinen Plan {program!r}; ihn zuerst importieren</translation>
    </message>
    <message>
        <source>{path} is a folder.</source>
        <translation>{path} ist ein Ordner.</translation>
    </message>
    <message>
        <source>{side!r}: allowed are left, right or nothing</source>
        <translation>{side!r}: erlaubt sind left, right oder nichts</translation>
    </message>
    <message>
        <source>{state!r}: allowed are {listed}</source>
        <translation>{state!r}: erlaubt sind {listed}</translation>
    </message>
    <message>
        <source>{text!r} has three numbers: which one is the load?</source>
        <translation>{text!r} hat drei Zahlen: welche ist die Last?</translation>
    </message>
    <message>
        <source>{text!r} is a range: one load is needed</source>
        <translation>{text!r} ist eine Spanne: nötig ist eine Last</translation>
    </message>
    <message>
        <source>{text!r} is a range: what was done?</source>
        <translation>{text!r} ist eine Spanne: was wurde gemacht?</translation>
    </message>
    <message>
        <source>{text!r} is neither yes nor no</source>
        <translation>{text!r} ist weder ja noch nein</translation>
    </message>
    <message>
        <source>{text!r} is no count: allowed are 5, 3x5, 5/5/4, 20 s, 0:30</source>
        <translation>{text!r} ist keine Anzahl: erlaubt sind 5, 3x5, 5/5/4, 20 s, 0:30</translation>
    </message>
    <message>
        <source>{text!r} is no date: write it as 2026-11-30</source>
        <translation>{text!r} ist kein Datum: als 2026-11-30 schreiben</translation>
    </message>
    <message>
        <source>{text!r} is no load: allowed are 62.5, 62.5 kg, 135 lb, BW, BW+10</source>
        <translation>{text!r} ist keine Last: erlaubt sind 62.5, 62.5 kg, 135 lb, BW, BW+10</translation>
    </message>
    <message>
        <source>{text!r} is no number of sets</source>
        <translation>{text!r} ist keine Satzzahl</translation>
    </message>
    <message>
        <source>{text!r} is no unit: allowed are kg and lb</source>
        <translation>{text!r} ist keine Maßeinheit: erlaubt sind kg und lb</translation>
    </message>
    <message>
        <source>{text!r}: allowed are 1 to {most_sets} sets, as in 3x5</source>
        <translation>{text!r}: erlaubt sind 1 bis {most_sets} Sätze, wie in 3x5</translation>
    </message>
    <message>
        <source>{text!r}: more than {most_sets} sets in one cell</source>
        <translation>{text!r}: mehr als {most_sets} Sätze in einer Zelle</translation>
    </message>
    <message>
        <source>{text!r}: write BW+10 for added load, BW-10 for help</source>
        <translation>{text!r}: BW+10 für Zusatzlast schreiben, BW-10 für Hilfe</translation>
    </message>
    <message>
        <source>{text!r}: {sets} sets, but {read} counts</source>
        <translation>{text!r}: {sets} Sätze, aber {read} Zahlen</translation>
    </message>
    <message>
        <source>{text} is a day: a spreadsheet makes one of 5-5-4 and the like; type it as 5/5/4</source>
        <translation>{text} ist ein Tag: eine Tabellenkalkulation macht das aus 5-5-4 und Ähnlichem; als 5/5/4 schreiben</translation>
    </message>
    <message>
        <source>{text} is before {year}</source>
        <translation>{text} liegt vor {year}</translation>
    </message>
    <message>
        <source>{text} is no day of the calendar</source>
        <translation>{text} ist kein Tag im Kalender</translation>
    </message>
    <message>
        <source>{text} is not a number: allowed are digits (at most {most_digits}), a sign and one decimal point or comma, like 62.5</source>
        <translation>{text} ist keine Zahl: erlaubt sind Ziffern (höchstens {most_digits}), ein Vorzeichen und ein Dezimalpunkt oder -komma, wie 62,5</translation>
    </message>
    <message>
        <source>{text} lies in the future</source>
        <translation>{text} liegt in der Zukunft</translation>
    </message>
    <message>
        <source>{text} lies in the future: dates up to {latest} are taken</source>
        <translation>{text} liegt in der Zukunft: übernommen werden Daten bis {latest}</translation>
    </message>
    <message>
        <source>{text} may be day or month first, and no date of the file tells; say which, or write dates as 2026-11-30</source>
        <translation>{text} kann mit Tag oder Monat beginnen, und kein Datum der Datei verrät es; angeben oder Daten als 2026-11-30 schreiben</translation>
    </message>
    <message>
        <source>{text} may be day or month first: say which under Dates</source>
        <translation>{text} kann mit Tag oder Monat beginnen: unter Daten angeben</translation>
    </message>
    <message>
        <source>{text} may be {value} or {text}: this file uses both decimal marks; write it without a mark or with other than three places</source>
        <translation>{text} kann {value} oder {text} sein: diese Datei verwendet beide Dezimalzeichen; ohne Zeichen schreiben oder nicht mit drei Stellen</translation>
    </message>
    <message>
        <source>{text} may be {whole}{fraction} or {whole}.{fraction}: write {whole}{fraction} or {whole}.{fraction}</source>
        <translation>{text} kann {whole}{fraction} oder {whole}.{fraction} sein: {whole}{fraction} oder {whole}.{fraction} schreiben</translation>
    </message>
    <message>
        <source>{text} sets, but {written} are written; {written} are read</source>
        <translation>{text} Sätze, aber {written} stehen da; {written} werden gelesen</translation>
    </message>
    <message>
        <source>{text} sets: allowed are 1 to 20</source>
        <translation>{text} Sätze: erlaubt sind 1 bis 20</translation>
    </message>
    <message>
        <source>{text} was read as a spreadsheet&apos;s number of {day}</source>
        <translation>{text} wurde als Tageszahl einer Tabellenkalkulation für {day} gelesen</translation>
    </message>
    <message>
        <source>{text}: in this file the day comes first in some dates and the month in others; write dates as 2026-11-30</source>
        <translation>{text}: in dieser Datei beginnen einige Daten mit dem Tag und andere mit dem Monat; Daten als 2026-11-30 schreiben</translation>
    </message>
    <message>
        <source>{text}: kg or lb? Say which under Loads without a unit</source>
        <translation>{text}: kg oder lb? Unter Lasten ohne Maßeinheit angeben</translation>
    </message>
    <message>
        <source>{text}: read as a pair, each of that load</source>
        <translation>{text}: als Paar gelesen, jede mit dieser Last</translation>
    </message>
    <message>
        <source>{text}: read as two sets; it may be left and right</source>
        <translation>{text}: als zwei Sätze gelesen; es kann links und rechts sein</translation>
    </message>
    <message>
        <source>{text}: the decimal mark here is {decimal_mark!r}</source>
        <translation>{text}: das Dezimalzeichen ist hier {decimal_mark!r}</translation>
    </message>
    <message>
        <source>{text}: the year must lie after 1900</source>
        <translation>{text}: das Jahr muss nach 1900 liegen</translation>
    </message>
    <message>
        <source>{text}: write numbers without separators between thousands, with one decimal point or comma, like 1250.5</source>
        <translation>{text}: Zahlen ohne Tausendertrennung schreiben, mit einem Dezimalpunkt oder -komma, wie 1250,5</translation>
    </message>
    <message>
        <source>{text}: write the year with four digits</source>
        <translation>{text}: das Jahr mit vier Ziffern schreiben</translation>
    </message>
    <message>
        <source>{value!r} is no unit: allowed are kg and lb</source>
        <translation>{value!r} ist keine Maßeinheit: erlaubt sind kg und lb</translation>
    </message>
    <message>
        <source>{value!r} is not a number: allowed is a decimal or whole number</source>
        <translation>{value!r} ist keine Zahl: erlaubt ist eine Dezimal- oder ganze Zahl</translation>
    </message>
    <message>
        <source>{value:g} is not a whole number</source>
        <translation>{value:g} ist keine ganze Zahl</translation>
    </message>
    <message>
        <source>{value} is not possible: allowed is {least:g} to {most:g}</source>
        <translation>{value} ist nicht möglich: erlaubt ist {least:g} bis {most:g}</translation>
    </message>
    <message>
        <source>{value} {value_2} is not a load: allowed is a number from -{most} to {most}</source>
        <translation>{value} {value_2} ist keine Last: erlaubt ist eine Zahl von -{most} bis {most}</translation>
    </message>
    <message>
        <source>{variable}: only the slowest variable may lack a ceiling</source>
        <translation>{variable}: nur die langsamste Größe darf ohne Obergrenze sein</translation>
    </message>
    <message>
        <source>{weekday}: {day}</source>
        <translation>{weekday}: {day}</translation>
    </message>
    <message>
        <source>{what}: at most {most_sets}, not {count}.</source>
        <translation>{what}: höchstens {most_sets}, nicht {count}.</translation>
    </message>
    <message>
        <source>{what}: {least} to {most}, not {value}.</source>
        <translation>{what}: {least} bis {most}, nicht {value}.</translation>
    </message>
    <message>
        <source>{what}: {value} stands twice.</source>
        <translation>{what}: {value} steht zweimal da.</translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <source>0 or more: help is typed for bodyweight only.</source>
        <translation>0 oder mehr: Hilfe wird nur bei Körpergewicht eingegeben.</translation>
    </message>
    <message>
        <source>A rest day: nothing is planned.</source>
        <translation>Ein Ruhetag: nichts ist geplant.</translation>
    </message>
    <message>
        <source>Add an activity</source>
        <translation>Aktivität hinzufügen</translation>
    </message>
    <message>
        <source>Add an exercise</source>
        <translation>Übung hinzufügen</translation>
    </message>
    <message>
        <source>Away on this day: nothing is asked.</source>
        <translation>An diesem Tag abwesend: keine Vorgabe.</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Körpergewicht</translation>
    </message>
    <message>
        <source>Correct session of {name}, {day}</source>
        <translation>Einheit von {name} berichtigen, {day}</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>Anstrengung</translation>
    </message>
    <message>
        <source>Effort of the other activity, 0 to 10</source>
        <translation>Anstrengung der anderen Aktivität, 0 bis 10</translation>
    </message>
    <message>
        <source>Effort of the session, 0 to 10</source>
        <translation>Anstrengung der Einheit, 0 bis 10</translation>
    </message>
    <message>
        <source>How hard, 0 to 10? Name, minutes, effort: all three.</source>
        <translation>Wie hart, 0 bis 10? Name, Minuten, Anstrengung: alle drei.</translation>
    </message>
    <message>
        <source>How many minutes? Name, minutes, effort: all three.</source>
        <translation>Wie viele Minuten? Name, Minuten, Anstrengung: alle drei.</translation>
    </message>
    <message>
        <source>How many? Type 0 if none was clean.</source>
        <translation>Wie viele? 0 eingeben, wenn keine sauber war.</translation>
    </message>
    <message>
        <source>Left and right, like 8/7.</source>
        <translation>Links und rechts, etwa 8/7.</translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>Minutes of the other activity</source>
        <translation>Minuten der anderen Aktivität</translation>
    </message>
    <message>
        <source>Motivation</source>
        <translation>Motivation</translation>
    </message>
    <message>
        <source>Motivation, 1 bad to 5 good</source>
        <translation>Motivation, 1 schlecht bis 5 gut</translation>
    </message>
    <message>
        <source>No program is assigned to this trainee.</source>
        <translation>Dieser Person ist kein Plan zugewiesen.</translation>
    </message>
    <message>
        <source>No target changes: training went on as asked, and that still stands.</source>
        <translation>Keine Vorgabe ändert sich: das Training lief wie vorgegeben weiter, und das gilt noch.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Note on the session</source>
        <translation>Notiz zur Einheit</translation>
    </message>
    <message>
        <source>Nothing is asked until a licensed professional&apos;s clearance is recorded with name and date.</source>
        <translation>Keine Vorgabe, bis die Freigabe einer zugelassenen Fachperson mit Name und Datum festgehalten ist.</translation>
    </message>
    <message>
        <source>One number: both sides work at once here.</source>
        <translation>Eine Zahl: beide Seiten arbeiten hier zugleich.</translation>
    </message>
    <message>
        <source>Other activity</source>
        <translation>Andere Aktivität</translation>
    </message>
    <message>
        <source>Remove session of {name}, {day}</source>
        <translation>Einheit von {name} entfernen, {day}</translation>
    </message>
    <message>
        <source>Session of {name}, {day}</source>
        <translation>Einheit von {name}, {day}</translation>
    </message>
    <message>
        <source>Set {exercise} otherwise</source>
        <translation>{exercise} anders setzen</translation>
    </message>
    <message>
        <source>Sleep</source>
        <translation>Schlaf</translation>
    </message>
    <message>
        <source>Sleep, 1 bad to 5 good</source>
        <translation>Schlaf, 1 schlecht bis 5 gut</translation>
    </message>
    <message>
        <source>Soreness</source>
        <translation>Muskelkater</translation>
    </message>
    <message>
        <source>Soreness, 1 bad to 5 good</source>
        <translation>Muskelkater, 1 schlecht bis 5 gut</translation>
    </message>
    <message>
        <source>Stress</source>
        <translation>Stress</translation>
    </message>
    <message>
        <source>Stress, 1 bad to 5 good</source>
        <translation>Stress, 1 schlecht bis 5 gut</translation>
    </message>
    <message>
        <source>The program has ended: assign the next one.</source>
        <translation>Der Plan ist zu Ende: bitte den nächsten zuweisen.</translation>
    </message>
    <message>
        <source>The program has not started yet.</source>
        <translation>Der Plan hat noch nicht begonnen.</translation>
    </message>
    <message>
        <source>Which activity? Its minutes or effort are typed.</source>
        <translation>Welche Aktivität? Minuten oder Anstrengung stehen schon da.</translation>
    </message>
    <message>
        <source>Which load? None was asked.</source>
        <translation>Welche Last? Es war keine vorgegeben.</translation>
    </message>
    <message>
        <source>best {work}</source>
        <translation>Bestleistung {work}</translation>
    </message>
    <message>
        <source>done</source>
        <translation>gemacht</translation>
    </message>
    <message>
        <source>in reserve</source>
        <translation>in Reserve</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>load in {unit}</source>
        <translation>Last in {unit}</translation>
    </message>
    <message>
        <source>not judged</source>
        <translation>nicht bewertet</translation>
    </message>
    <message>
        <source>not planned</source>
        <translation>nicht geplant</translation>
    </message>
    <message>
        <source>not planned yet</source>
        <translation>noch nicht geplant</translation>
    </message>
    <message>
        <source>nothing is asked</source>
        <translation>keine Vorgabe</translation>
    </message>
    <message>
        <source>on {day}</source>
        <translation>am {day}</translation>
    </message>
    <message>
        <source>pain 0-10</source>
        <translation>Schmerz 0-10</translation>
    </message>
    <message>
        <source>pain, 0 to 10</source>
        <translation>Schmerz, 0 bis 10</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation>aufgezeichnet</translation>
    </message>
    <message>
        <source>recorded, changed</source>
        <translation>aufgezeichnet, geändert</translation>
    </message>
    <message>
        <source>repetitions done</source>
        <translation>gemachte Wiederholungen</translation>
    </message>
    <message>
        <source>repetitions in reserve</source>
        <translation>Wiederholungen in Reserve</translation>
    </message>
    <message>
        <source>seconds held</source>
        <translation>gehaltene Sekunden</translation>
    </message>
    <message>
        <source>with {count} in reserve</source>
        <translation>mit {count} in Reserve</translation>
    </message>
    <message>
        <source>{amount} less than asked</source>
        <translation>{amount} weniger als vorgegeben</translation>
    </message>
    <message>
        <source>{amount} more than asked</source>
        <translation>{amount} mehr als vorgegeben</translation>
    </message>
    <message>
        <source>{day} {name} {minutes}, effort {effort}</source>
        <translation>{day} {name} {minutes}, Anstrengung {effort}</translation>
    </message>
    <message>
        <source>{exercise}, set {number}, {what}</source>
        <translation>{exercise}, Satz {number}, {what}</translation>
    </message>
    <message>
        <source>{program}, week {week} of {weeks}</source>
        <translation>{program}, Woche {week} von {weeks}</translation>
    </message>
    <message>
        <source>{text}, deload</source>
        <translation>{text}, Deload</translation>
    </message>
    <message>
        <source>{unit} are typed here: that is {value}.</source>
        <translation>Hier gilt {unit}: das sind {value}.</translation>
    </message>
    <message>
        <source>{unit} are typed here: that is {value}. Return again takes it.</source>
        <translation>Hier gilt {unit}: das sind {value}. Noch einmal Return übernimmt es.</translation>
    </message>
    <message>
        <source>{value} against {asked}: Return again if it is meant.</source>
        <translation>{value} gegen {asked}: noch einmal Return, wenn es so gemeint ist.</translation>
    </message>
    <message>
        <source>{work} again</source>
        <translation>{work} noch einmal</translation>
    </message>
</context>
<context>
    <name>SessionFoot</name>
    <message>
        <source>1 bad, 5 good</source>
        <translation>1 schlecht, 5 gut</translation>
    </message>
    <message>
        <source>Add exercise</source>
        <translation>Übung dazu</translation>
    </message>
    <message>
        <source>Body mass, sleep, soreness, stress, motivation, other activities, red flags</source>
        <translation>Körpergewicht, Schlaf, Muskelkater, Stress, Motivation, andere Aktivitäten, Warnzeichen</translation>
    </message>
    <message>
        <source>Exercise as asked</source>
        <translation>Übung wie vorgegeben</translation>
    </message>
    <message>
        <source>Extra set</source>
        <translation>Satz mehr</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Note on the session</source>
        <translation>Notiz zur Einheit</translation>
    </message>
    <message>
        <source>Red flag: chest pain, fainting, sudden severe pain or numbness</source>
        <translation>Warnzeichen: Brustschmerz, Ohnmacht, plötzlicher starker Schmerz oder Taubheit</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Set as asked</source>
        <translation>Satz wie vorgegeben</translation>
    </message>
    <message>
        <source>Variation</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation>Aufwärmen</translation>
    </message>
    <message>
        <source>cycling, a match</source>
        <translation>Rad, Fußball</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>of 10</source>
        <translation>von 10</translation>
    </message>
    <message>
        <source>training load {load}</source>
        <translation>Trainingsbelastung {load}</translation>
    </message>
</context>
<context>
    <name>SessionForm</name>
    <message>
        <source>Nothing is typed yet.</source>
        <translation>Noch nichts eingegeben.</translation>
    </message>
    <message>
        <source>Removed. Undo brings it back.</source>
        <translation>Entfernt. Rückgängig holt sie zurück.</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Save the correction</source>
        <translation>Korrektur speichern</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Gespeichert</translation>
    </message>
    <message>
        <source>This day has not come yet: today at the latest.</source>
        <translation>Dieser Tag kommt erst noch: spätestens heute.</translation>
    </message>
</context>
<context>
    <name>SessionHeading</name>
    <message>
        <source>All as asked</source>
        <translation>Alles wie vorgegeben</translation>
    </message>
    <message>
        <source>Day of the session</source>
        <translation>Tag der Einheit</translation>
    </message>
    <message>
        <source>Next day</source>
        <translation>Nächster Tag</translation>
    </message>
    <message>
        <source>Next day: Alt+Page Down. Training day: Ctrl+Page Down</source>
        <translation>Nächster Tag: Alt+Bild abwärts. Trainingstag: Strg+Bild abwärts</translation>
    </message>
    <message>
        <source>Previous day</source>
        <translation>Voriger Tag</translation>
    </message>
    <message>
        <source>Previous day: Alt+Page Up. Training day: Ctrl+Page Up</source>
        <translation>Voriger Tag: Alt+Bild aufwärts. Trainingstag: Strg+Bild aufwärts</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Today: Alt+Home</source>
        <translation>Heute: Alt+Pos1</translation>
    </message>
</context>
<context>
    <name>SessionKeys</name>
    <message>
        <source>Add an exercise</source>
        <translation>Übung hinzufügen</translation>
    </message>
    <message>
        <source>All as asked</source>
        <translation>Alles wie vorgegeben</translation>
    </message>
    <message>
        <source>Body mass, wellness, other activity, red flag</source>
        <translation>Körpergewicht, Befinden, andere Aktivität, Warnzeichen</translation>
    </message>
    <message>
        <source>Clear a cell</source>
        <translation>Zelle leeren</translation>
    </message>
    <message>
        <source>Done instead</source>
        <translation>Stattdessen gemacht</translation>
    </message>
    <message>
        <source>Drop a set</source>
        <translation>Satz weglassen</translation>
    </message>
    <message>
        <source>Exercise as asked</source>
        <translation>Übung wie vorgegeben</translation>
    </message>
    <message>
        <source>Extra set</source>
        <translation>Satz mehr</translation>
    </message>
    <message>
        <source>Go to a date</source>
        <translation>Zu einem Datum gehen</translation>
    </message>
    <message>
        <source>Load, where none is asked</source>
        <translation>Last, wo keine vorgegeben ist</translation>
    </message>
    <message>
        <source>Next cell</source>
        <translation>Nächste Zelle</translation>
    </message>
    <message>
        <source>Next day</source>
        <translation>Nächster Tag</translation>
    </message>
    <message>
        <source>Next exercise</source>
        <translation>Nächste Übung</translation>
    </message>
    <message>
        <source>Next row</source>
        <translation>Nächste Zeile</translation>
    </message>
    <message>
        <source>Next session on record</source>
        <translation>Nächste aufgezeichnete Einheit</translation>
    </message>
    <message>
        <source>Next training day</source>
        <translation>Nächster Trainingstag</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>One more session on this day</source>
        <translation>Noch eine Einheit an diesem Tag</translation>
    </message>
    <message>
        <source>Other variation</source>
        <translation>Andere Variante</translation>
    </message>
    <message>
        <source>Save; then next trainee</source>
        <translation>Speichern; dann nächste Person</translation>
    </message>
    <message>
        <source>Search the past</source>
        <translation>Rückblick durchsuchen</translation>
    </message>
    <message>
        <source>Set as asked</source>
        <translation>Satz wie vorgegeben</translation>
    </message>
    <message>
        <source>Take typing back</source>
        <translation>Eingaben zurücknehmen</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Warm-up set</source>
        <translation>Aufwärmsatz</translation>
    </message>
</context>
<context>
    <name>SessionTyping</name>
    <message>
        <source>Instead: {exercise}</source>
        <translation>Stattdessen: {exercise}</translation>
    </message>
    <message>
        <source>Nothing was asked of this set: type what was done.</source>
        <translation>Für diesen Satz gibt es keine Vorgabe: eingeben, was gemacht wurde.</translation>
    </message>
    <message>
        <source>This exercise has no variations.</source>
        <translation>Diese Übung hat keine Varianten.</translation>
    </message>
</context>
<context>
    <name>SessionWay</name>
    <message>
        <source>No further session is on record.</source>
        <translation>Keine weitere Einheit ist aufgezeichnet.</translation>
    </message>
    <message>
        <source>There is no further training day.</source>
        <translation>Es gibt keinen weiteren Trainingstag.</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source> on {day}</source>
        <translation> am {day}</translation>
    </message>
    <message>
        <source>, with collars</source>
        <translation>, mit Verschlüssen</translation>
    </message>
    <message>
        <source>Best: {work}</source>
        <translation>Bestleistung: {work}</translation>
    </message>
    <message>
        <source>Clean: in the form agreed; only these count. Reserve: how many more would have been clean. Pain: 0 to 10; where it grows, stop that exercise and tell your coach. Effort of the whole session: 0 rest, 10 the hardest ever. 1-5: 1 bad, 5 good.</source>
        <translation>Sauber: in der vereinbarten Form; nur diese zählen. Reserve: wie viele noch sauber gewesen wären. Schmerz: 0 bis 10; wo er zunimmt, diese Übung beenden und dem Coach sagen. Anstrengung der ganzen Einheit: 0 Ruhe, 10 das Härteste überhaupt. 1-5: 1 schlecht, 5 gut.</translation>
    </message>
    <message>
        <source>First set: as many clean reps as you can, stop at&#xa0;{stop}</source>
        <translation>Erster Satz: so viele saubere Wdh wie möglich, Schluss bei&#xa0;{stop}</translation>
    </message>
    <message>
        <source>In between, if your coach agrees: {ways}</source>
        <translation>Dazwischen, wenn der Coach zustimmt: {ways}</translation>
    </message>
    <message>
        <source>Last set: as many clean reps as you can, stop at&#xa0;{stop}</source>
        <translation>Letzter Satz: so viele saubere Wdh wie möglich, Schluss bei&#xa0;{stop}</translation>
    </message>
    <message>
        <source>Last set: hold as long as it is clean, stop at&#xa0;{stop}</source>
        <translation>Letzter Satz: halten, solange es sauber ist, Schluss bei&#xa0;{stop}</translation>
    </message>
    <message>
        <source>Last time, {day}: {work}</source>
        <translation>Letztes Mal, {day}: {work}</translation>
    </message>
    <message>
        <source>No font is installed on this computer: a sheet needs one.</source>
        <translation>Auf diesem Rechner ist keine Schrift installiert: ein Blatt braucht eine.</translation>
    </message>
    <message>
        <source>Nobody is asked anything on {day}.</source>
        <translation>Für den {day} hat niemand eine Vorgabe.</translation>
    </message>
    <message>
        <source>Not asked: pain {pain} of 10{on_day}; ask your coach</source>
        <translation>Keine Vorgabe: Schmerz {pain} von 10{on_day}; den Coach fragen</translation>
    </message>
    <message>
        <source>Not asked: {days} since the last time; ask your coach where to start</source>
        <translation>Keine Vorgabe: {days} seit dem letzten Mal; den Coach fragen, wo zu beginnen ist</translation>
    </message>
    <message>
        <source>Not asked: {why}; ask your coach</source>
        <translation>Keine Vorgabe: {why}; den Coach fragen</translation>
    </message>
    <message>
        <source>Not set yet: ask your coach where to start</source>
        <translation>Noch nicht gesetzt: den Coach fragen, wo zu beginnen ist</translation>
    </message>
    <message>
        <source>Nothing is asked of {name} on {day}.</source>
        <translation>Für {name} gibt es am {day} keine Vorgabe.</translation>
    </message>
    <message>
        <source>Nothing is asked of {name} until a licensed professional&apos;s clearance is recorded.</source>
        <translation>Für {name} gibt es keine Vorgabe, bis die Freigabe einer zugelassenen Fachperson festgehalten ist.</translation>
    </message>
    <message>
        <source>The program of {name} has ended before {day}.</source>
        <translation>Der Plan von {name} war vor dem {day} zu Ende.</translation>
    </message>
    <message>
        <source>The program of {name} has not begun on {day}.</source>
        <translation>Der Plan von {name} hat am {day} noch nicht begonnen.</translation>
    </message>
    <message>
        <source>The sheet cannot be written to {path}: {why}</source>
        <translation>Das Blatt lässt sich nicht nach {path} schreiben: {why}</translation>
    </message>
    <message>
        <source>Upper boxes: clean repetitions or seconds of each set, under what is asked. Lower boxes: the load where it was another, how many more would have been clean, pain 0 to 10; where pain grows, stop that exercise and tell your coach.</source>
        <translation>Obere Kästchen: saubere Wiederholungen oder Sekunden jedes Satzes, unter der Vorgabe. Untere Kästchen: die Last, wenn sie anders war, wie viele noch sauber gewesen wären, Schmerz 0 bis 10; wo Schmerz zunimmt, diese Übung beenden und dem Coach sagen.</translation>
    </message>
    <message>
        <source>Warm-up {ramp}</source>
        <translation>Aufwärmen {ramp}</translation>
    </message>
    <message>
        <source>about {minutes}</source>
        <translation>etwa {minutes}</translation>
    </message>
    <message>
        <source>band: {band}</source>
        <translation>Band: {band}</translation>
    </message>
    <message>
        <source>body mass {unit}</source>
        <translation>Körpergewicht {unit}</translation>
    </message>
    <message>
        <source>clean</source>
        <translation>sauber</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>Deload</translation>
    </message>
    <message>
        <source>dumbbell handle alone</source>
        <translation>Kurzhantelgriff allein</translation>
    </message>
    <message>
        <source>dumbbell handle: {discs} at each end</source>
        <translation>Kurzhantelgriff: {discs} an jedem Ende</translation>
    </message>
    <message>
        <source>effort 0-10</source>
        <translation>Anstrengung 0-10</translation>
    </message>
    <message>
        <source>from {first}</source>
        <translation>von {first}</translation>
    </message>
    <message>
        <source>help of {band}</source>
        <translation>Hilfe von {band}</translation>
    </message>
    <message>
        <source>in turn with {others}</source>
        <translation>im Wechsel mit {others}</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>left s</source>
        <translation>links s</translation>
    </message>
    <message>
        <source>load {unit}</source>
        <translation>Last {unit}</translation>
    </message>
    <message>
        <source>minutes</source>
        <translation>Minuten</translation>
    </message>
    <message>
        <source>motivation 1-5</source>
        <translation>Motivation 1-5</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>nicht gemacht</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>one more rep</source>
        <translation>eine Wdh mehr</translation>
    </message>
    <message>
        <source>one more set</source>
        <translation>ein Satz mehr</translation>
    </message>
    <message>
        <source>page {number} of {count}</source>
        <translation>Seite {number} von {count}</translation>
    </message>
    <message>
        <source>pain</source>
        <translation>Schmerz</translation>
    </message>
    <message>
        <source>reps</source>
        <translation>Wdh</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>rest {clock}</source>
        <translation>Pause {clock}</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>right s</source>
        <translation>rechts s</translation>
    </message>
    <message>
        <source>seconds</source>
        <translation>Sekunden</translation>
    </message>
    <message>
        <source>sleep 1-5</source>
        <translation>Schlaf 1-5</translation>
    </message>
    <message>
        <source>slower</source>
        <translation>langsamer</translation>
    </message>
    <message>
        <source>smaller discs</source>
        <translation>kleinere Scheiben</translation>
    </message>
    <message>
        <source>soreness 1-5</source>
        <translation>Muskelkater 1-5</translation>
    </message>
    <message>
        <source>stress 1-5</source>
        <translation>Stress 1-5</translation>
    </message>
    <message>
        <source>tempo {tempo}</source>
        <translation>Tempo {tempo}</translation>
    </message>
    <message>
        <source>then {work}</source>
        <translation>dann {work}</translation>
    </message>
    <message>
        <source>to {last}</source>
        <translation>bis {last}</translation>
    </message>
    <message>
        <source>week {week} of {weeks}</source>
        <translation>Woche {week} von {weeks}</translation>
    </message>
    <message>
        <source>{amount} in {sets}</source>
        <translation>{amount} in {sets}</translation>
    </message>
    <message>
        <source>{bar} alone</source>
        <translation>{bar} allein</translation>
    </message>
    <message>
        <source>{bar}: {discs} a side</source>
        <translation>{bar}: {discs} je Seite</translation>
    </message>
    <message>
        <source>{count} in reserve</source>
        <translation>{count} in Reserve</translation>
    </message>
    <message>
        <source>{count} trainees</source>
        <translation>{count} Personen</translation>
    </message>
    <message>
        <source>{day} is a rest day of {name}: nothing is asked.</source>
        <translation>{day} ist ein Ruhetag von {name}: keine Vorgabe.</translation>
    </message>
    <message>
        <source>{kind} ({asked}, {share} harder)</source>
        <translation>{kind} ({asked}, {share} schwerer)</translation>
    </message>
    <message>
        <source>{load}, {loading}</source>
        <translation>{load}, {loading}</translation>
    </message>
    <message>
        <source>{name} has no program: assign one, and its days can be printed.</source>
        <translation>{name} hat keinen Plan: einen zuweisen, dann lassen sich seine Tage drucken.</translation>
    </message>
    <message>
        <source>{name} is away on {day}: nothing is asked.</source>
        <translation>{name} ist am {day} abwesend: keine Vorgabe.</translation>
    </message>
    <message>
        <source>{ramp} each</source>
        <translation>je {ramp}</translation>
    </message>
    <message>
        <source>{reps} without load</source>
        <translation>{reps} ohne Last</translation>
    </message>
    <message>
        <source>{seconds} a repetition</source>
        <translation>{seconds} je Wiederholung</translation>
    </message>
    <message>
        <source>{sets}, each side,</source>
        <translation>{sets}, je Seite,</translation>
    </message>
    <message>
        <source>{stack}: pin at {load}</source>
        <translation>{stack}: Stift bei {load}</translation>
    </message>
    <message>
        <source>{stack}: pin at {load}, with the small plate</source>
        <translation>{stack}: Stift bei {load}, mit der kleinen Platte</translation>
    </message>
    <message>
        <source>{work} each side</source>
        <translation>{work} je Seite</translation>
    </message>
</context>
<context>
    <name>SheetArea</name>
    <message>
        <source>1 page. Boxes are left blank for the pencil.</source>
        <translation>1 Seite. Leere Kästchen für den Stift.</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Day of the sheet</source>
        <translation>Tag des Blatts</translation>
    </message>
    <message>
        <source>Go to a date</source>
        <translation>Zu einem Datum gehen</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Larger  +</source>
        <translation>Größer  +</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Next day</source>
        <translation>Nächster Tag</translation>
    </message>
    <message>
        <source>Next day of training</source>
        <translation>Nächster Trainingstag</translation>
    </message>
    <message>
        <source>Next day of training: Ctrl+Page Down</source>
        <translation>Nächster Trainingstag: Strg+Bild abwärts</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Previous day of training</source>
        <translation>Voriger Trainingstag</translation>
    </message>
    <message>
        <source>Previous day of training: Ctrl+Page Up</source>
        <translation>Voriger Trainingstag: Strg+Bild aufwärts</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Als PDF speichern</translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation>Als PDF…</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation>Blatt speichern</translation>
    </message>
    <message>
        <source>Sheet saved to {path}</source>
        <translation>Blatt gespeichert in {path}</translation>
    </message>
    <message>
        <source>Sheet sent to {printer}</source>
        <translation>Blatt an {printer} gesendet</translation>
    </message>
    <message>
        <source>Smaller  −</source>
        <translation>Kleiner  −</translation>
    </message>
    <message>
        <source>The group</source>
        <translation>Die Gruppe</translation>
    </message>
    <message>
        <source>The group, or this trainee</source>
        <translation>Die Gruppe oder diese Person</translation>
    </message>
    <message>
        <source>The printer did not take the sheet.</source>
        <translation>Der Drucker hat das Blatt nicht angenommen.</translation>
    </message>
    <message>
        <source>This trainee</source>
        <translation>Diese Person</translation>
    </message>
    <message>
        <source>Whole page  0</source>
        <translation>Ganze Seite  0</translation>
    </message>
    <message>
        <source>Whose sheet</source>
        <translation>Wessen Blatt</translation>
    </message>
    <message>
        <source>{count} pages. Boxes are left blank for the pencil.</source>
        <translation>{count} Seiten. Leere Kästchen für den Stift.</translation>
    </message>
    <message>
        <source>{count} train on this day; save and next follows the sheet</source>
        <translation>{count} trainieren an diesem Tag; Speichern und Weiter folgt dem Blatt</translation>
    </message>
</context>
<context>
    <name>SheetPreview</name>
    <message>
        <source>Preview of the sheet</source>
        <translation>Vorschau des Blatts</translation>
    </message>
</context>
<context>
    <name>ShelfRow</name>
    <message>
        <source>Ctrl+D</source>
        <translation>Strg+D</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Entf</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Verdoppeln</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Return</source>
        <translation>Return</translation>
    </message>
    <message>
        <source>{action}: {name}</source>
        <translation>{action}: {name}</translation>
    </message>
</context>
<context>
    <name>SlotBlock</name>
    <message>
        <source>Not planned</source>
        <translation>Nicht geplant</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>{exercise}, note</source>
        <translation>{exercise}, Notiz</translation>
    </message>
</context>
<context>
    <name>SlotFields</name>
    <message>
        <source>A name tells two lines of one exercise apart, such as heavy and light</source>
        <translation>Ein Name hält zwei Linien einer Übung auseinander, etwa schwer und leicht</translation>
    </message>
    <message>
        <source>In reserve</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>In turn</source>
        <translation>Wechsel</translation>
    </message>
    <message>
        <source>Letter of slots done in turn</source>
        <translation>Buchstabe der Plätze im Wechsel</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Linie</translation>
    </message>
    <message>
        <source>Load at the start</source>
        <translation>Last am Start</translation>
    </message>
    <message>
        <source>Load at the start as a percentage of the maximum</source>
        <translation>Last am Start in Prozent des Maximums</translation>
    </message>
    <message>
        <source>Name of the line</source>
        <translation>Name der Linie</translation>
    </message>
    <message>
        <source>Note for the sheet</source>
        <translation>Notiz für das Blatt</translation>
    </message>
    <message>
        <source>Reckoned once, from the trend on the day the program is given; without a trend the load beside it holds</source>
        <translation>Einmal gerechnet, aus dem Trend am Tag der Zuweisung; ohne Trend gilt die Last daneben</translation>
    </message>
    <message>
        <source>Repetitions at the start</source>
        <translation>Wiederholungen am Start</translation>
    </message>
    <message>
        <source>Repetitions in reserve</source>
        <translation>Wiederholungen in Reserve</translation>
    </message>
    <message>
        <source>Rest</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>Rest after a set</source>
        <translation>Pause nach einem Satz</translation>
    </message>
    <message>
        <source>Seconds a repetition at the start</source>
        <translation>Sekunden je Wiederholung am Start</translation>
    </message>
    <message>
        <source>Seconds each</source>
        <translation>s je Wdh</translation>
    </message>
    <message>
        <source>Sets at the start</source>
        <translation>Sätze am Start</translation>
    </message>
    <message>
        <source>Start: sets</source>
        <translation>Start: Sätze</translation>
    </message>
    <message>
        <source>Tempo</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>Tempo: seconds down, held, up</source>
        <translation>Tempo: Sekunden ab, gehalten, auf</translation>
    </message>
    <message>
        <source>The start lies outside the rule&apos;s {floor} to {ceiling}.</source>
        <translation>Der Start liegt außerhalb von {floor} bis {ceiling} der Regel.</translation>
    </message>
    <message>
        <source>Variation at the start</source>
        <translation>Variante am Start</translation>
    </message>
    <message>
        <source>hold s</source>
        <translation>Halten s</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>insgesamt</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>name of the line</source>
        <translation>Name der Linie</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>or % of max</source>
        <translation>oder % Max.</translation>
    </message>
    <message>
        <source>reps</source>
        <translation>Wdh</translation>
    </message>
    <message>
        <source>reserve</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>Pause</translation>
    </message>
    <message>
        <source>sets</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <source>slots in turn</source>
        <translation>Plätze im Wechsel</translation>
    </message>
    <message>
        <source>start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>tempo</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>the only one</source>
        <translation>die einzige</translation>
    </message>
    <message>
        <source>variation</source>
        <translation>Variante</translation>
    </message>
</context>
<context>
    <name>SlotPanel</name>
    <message>
        <source>Another exercise here</source>
        <translation>Andere Übung hier</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Verdoppeln</translation>
    </message>
    <message>
        <source>Exchange the exercise of this slot</source>
        <translation>Die Übung dieses Platzes tauschen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Auf</translation>
    </message>
</context>
<context>
    <name>SlotRow</name>
    <message>
        <source>Return edits, Space marks, Alt with the arrows moves, Delete removes.</source>
        <translation>Return bearbeitet, Leertaste markiert, Alt mit den Pfeilen verschiebt, Entf entfernt.</translation>
    </message>
    <message>
        <source>marked</source>
        <translation>markiert</translation>
    </message>
</context>
<context>
    <name>SlotSheet</name>
    <message>
        <source>asked</source>
        <translation>Vorgabe</translation>
    </message>
    <message>
        <source>last time</source>
        <translation>letztes Mal</translation>
    </message>
    <message>
        <source>warm-up</source>
        <translation>Aufw.</translation>
    </message>
</context>
<context>
    <name>Slots</name>
    <message>
        <source>changed for {name}</source>
        <translation>geändert für {name}</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>Deload</translation>
    </message>
    <message>
        <source>in turn {letter}</source>
        <translation>im Wechsel {letter}</translation>
    </message>
    <message>
        <source>missed</source>
        <translation>verfehlt</translation>
    </message>
    <message>
        <source>rest {time}</source>
        <translation>Pause {time}</translation>
    </message>
    <message>
        <source>rolls over</source>
        <translation>springt um</translation>
    </message>
    <message>
        <source>tempo {tempo}</source>
        <translation>Tempo {tempo}</translation>
    </message>
    <message>
        <source>the main line</source>
        <translation>der Hauptlinie</translation>
    </message>
    <message>
        <source>{count} in all over {sets}</source>
        <translation>{count} insgesamt über {sets}</translation>
    </message>
    <message>
        <source>{count} in reserve</source>
        <translation>{count} in Reserve</translation>
    </message>
    <message>
        <source>{percent} % of {line}</source>
        <translation>{percent} % von {line}</translation>
    </message>
    <message>
        <source>{time} a repetition</source>
        <translation>{time} je Wiederholung</translation>
    </message>
</context>
<context>
    <name>Sources</name>
    <message>
        <source>48 h between sessions for the same muscles, guideline quoted second-hand; sets to failure delay recovery by 24-48 h: Morán-Navarro 2017, Eur J Appl Physiol 117(12):2387-2399</source>
        <translation>48 h zwischen Einheiten für dieselben Muskeln, Leitlinie aus zweiter Hand zitiert; Sätze bis zum Versagen verzögern die Erholung um 24-48 h: Morán-Navarro 2017, Eur J Appl Physiol 117(12):2387-2399</translation>
    </message>
    <message>
        <source>ACSM 2009, Med Sci Sports Exerc 41(3):687-708: raise the load by 2-10 %</source>
        <translation>ACSM 2009, Med Sci Sports Exerc 41(3):687-708: die Last um 2-10 % steigern</translation>
    </message>
    <message>
        <source>Bell 2025, Strength Cond J (review): every 4-8 weeks; Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y (survey of competitive athletes): every 5.6 ± 2.3 weeks</source>
        <translation>Bell 2025, Strength Cond J (Übersichtsarbeit): alle 4-8 Wochen; Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y (Umfrage unter Wettkampfsportlern): alle 5,6 ± 2,3 Wochen</translation>
    </message>
    <message>
        <source>Iversen 2021, Sports Med 51(10):2079-2095</source>
        <translation>Iversen 2021, Sports Med 51(10):2079-2095</translation>
    </message>
    <message>
        <source>Miller 2010, Pediatr Clin N Am 57(3):671-682; supervision and no maximum tests: common practice</source>
        <translation>Miller 2010, Pediatr Clin N Am 57(3):671-682; Aufsicht und keine Maximaltests: gängige Praxis</translation>
    </message>
    <message>
        <source>Schoenfeld 2017, J Sports Sci 35(11):1073-1082, DOI 10.1080/02640414.2016.1210197</source>
        <translation>Schoenfeld 2017, J Sports Sci 35(11):1073-1082, DOI 10.1080/02640414.2016.1210197</translation>
    </message>
    <message>
        <source>WHO 2020, Guidelines on physical activity and sedentary behaviour (quoted second-hand): all major muscle groups on 2 or more days a week</source>
        <translation>WHO 2020, Leitlinien zu körperlicher Aktivität und sitzendem Verhalten (aus zweiter Hand zitiert): alle großen Muskelgruppen an 2 oder mehr Tagen pro Woche</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>gängige Praxis</translation>
    </message>
    <message>
        <source>common practice; no significant loss was seen after 3 weeks off: Ogasawara 2011</source>
        <translation>gängige Praxis; nach 3 Wochen Pause zeigte sich kein bedeutsamer Verlust: Ogasawara 2011</translation>
    </message>
    <message>
        <source>monotony as in Foster 1998, Med Sci Sports Exerc 30(7):1164-1168; the limit of 2 is second-hand</source>
        <translation>Monotonie nach Foster 1998, Med Sci Sports Exerc 30(7):1164-1168; die Grenze von 2 ist aus zweiter Hand</translation>
    </message>
    <message>
        <source>published guidance for older adults; WHO 2020, Guidelines on physical activity and sedentary behaviour (quoted second-hand)</source>
        <translation>veröffentlichte Empfehlungen für ältere Erwachsene; WHO 2020, Leitlinien zu körperlicher Aktivität und sitzendem Verhalten (aus zweiter Hand zitiert)</translation>
    </message>
    <message>
        <source>triggers named in Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y (stall, soreness, aches); two at once: common practice</source>
        <translation>Auslöser aus Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y (Stillstand, Muskelkater, Beschwerden); zwei zugleich: gängige Praxis</translation>
    </message>
</context>
<context>
    <name>Starters</name>
    <message>
        <source>A first year of holds: handstand against the wall, L-sit, hanging, each while fresh, then push-ups, rows and legs. It takes a wall, a box, a bar to hang from and a low one to row under; about 45 minutes. Repetitions or seconds grow first, then the variation gets harder. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Ein erstes Jahr mit Halteübungen: Handstand an der Wand, L-Sitz, Hängen, jeweils ausgeruht, dann Liegestütze, Rudern und Beine. Nötig sind eine Wand, ein Kasten, eine Stange zum Hängen und eine niedrige zum Rudern; etwa 45 Minuten. Zuerst steigen Wiederholungen oder Sekunden, dann wird die Variante schwerer. Jede sechste Woche ist eine Entlastungswoche. Die Spannen sind gängige Praxis. Für Gesunde: eine Erkrankung, Schmerz, eine frische Verletzung oder zweifelhafte Gesundheitsfragen brauchen zuerst die Freigabe einer zugelassenen Fachperson.</translation>
    </message>
    <message>
        <source>Base</source>
        <translation>Basis</translation>
    </message>
    <message>
        <source>Bodyweight alone, with one bar to hang from and one at hip height. Repetitions grow first, then the variation gets harder. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Nur Körpergewicht, mit einer Stange zum Hängen und einer auf Hüfthöhe. Zuerst steigen Wiederholungen, dann wird die Variante schwerer. Jede sechste Woche ist eine Entlastungswoche. Die Spannen sind gängige Praxis. Für Gesunde: eine Erkrankung, Schmerz, eine frische Verletzung oder zweifelhafte Gesundheitsfragen brauchen zuerst die Freigabe einer zugelassenen Fachperson.</translation>
    </message>
    <message>
        <source>Build</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Deadlift, front squat</source>
        <translation>Kreuzheben, Frontkniebeuge</translation>
    </message>
    <message>
        <source>Deload</source>
        <translation>Deload</translation>
    </message>
    <message>
        <source>Five days, mixed equipment, for size</source>
        <translation>Fünf Tage, gemischt, Muskelaufbau</translation>
    </message>
    <message>
        <source>Floor space and a wall, nothing else. Pulling needs something to pull on, so this has none: add a row or a pull-up as soon as there is a bar. Repetitions or seconds grow first, then the variation gets harder. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Platz am Boden und eine Wand, sonst nichts. Ziehen braucht etwas zum Ziehen, also fehlt es hier: Rudern oder Klimmzug dazunehmen, sobald es eine Stange gibt. Zuerst steigen Wiederholungen oder Sekunden, dann wird die Variante schwerer. Jede sechste Woche ist eine Entlastungswoche. Die Spannen sind gängige Praxis. Für Gesunde: eine Erkrankung, Schmerz, eine frische Verletzung oder zweifelhafte Gesundheitsfragen brauchen zuerst die Freigabe einer zugelassenen Fachperson.</translation>
    </message>
    <message>
        <source>For somebody new to it who owns a few pairs of dumbbells and a bench. Both days train the whole body; each takes about 45 minutes. Nothing here pulls from above: add a pull-up as soon as there is a bar. Repetitions grow before load. Every load starts light on purpose: set each trainee&apos;s own, or put an assessment first. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Für den Einstieg mit einigen Paar Kurzhanteln und einer Bank. Beide Tage trainieren den ganzen Körper; jeder dauert etwa 45 Minuten. Nichts hier zieht von oben: einen Klimmzug dazunehmen, sobald es eine Stange gibt. Wiederholungen steigen vor der Last. Jede Last beginnt mit Absicht leicht: für jede Person eine eigene setzen oder einen Test voranstellen. Jede sechste Woche ist eine Entlastungswoche. Die Spannen sind gängige Praxis. Für Gesunde: eine Erkrankung, Schmerz, eine frische Verletzung oder zweifelhafte Gesundheitsfragen brauchen zuerst die Freigabe einer zugelassenen Fachperson.</translation>
    </message>
    <message>
        <source>For somebody who has five clean pull-ups and dips: planche and front lever on turning days, each while fresh, then pulls, pushes and legs. It takes a bar, parallel bars, rings, a low bar and a box; about 45 minutes. Wrists and elbows need weeks, not days, to get used to straight-arm work: repeat a hold that aches. Repetitions or seconds grow first, then the variation gets harder. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Ab fünf sauberen Klimmzügen und Dips: Planche und Front Lever an wechselnden Tagen, jeweils ausgeruht, dann Ziehen, Drücken und Beine. Nötig sind eine Stange, ein Barren, Ringe, eine niedrige Stange und ein Kasten; etwa 45 Minuten. Handgelenke und Ellbogen brauchen Wochen, nicht Tage, um sich an gestreckte Arme zu gewöhnen: eine Haltung, die schmerzt, wiederholen. Zuerst steigen Wiederholungen oder Sekunden, dann wird die Variante schwerer. Jede sechste Woche ist eine Entlastungswoche. Die Spannen sind gängige Praxis. Für Gesunde: eine Erkrankung, Schmerz, eine frische Verletzung oder zweifelhafte Gesundheitsfragen brauchen zuerst die Freigabe einer zugelassenen Fachperson.</translation>
    </message>
    <message>
        <source>For somebody who owns a barbell, discs, a bench and a bar to hang from. Every load starts at the bare bar: set each trainee&apos;s own start first. Repetitions grow before load; bodyweight exercises move to a harder variation. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Mit Langhantel, Scheiben, einer Bank und einer Stange zum Hängen. Jede Last beginnt mit der leeren Stange: zuerst für jede Person den eigenen Start setzen. Wiederholungen steigen vor der Last; Übungen mit Körpergewicht gehen zu einer schwereren Variante. Jede sechste Woche ist eine Entlastungswoche. Die Spannen sind gängige Praxis. Für Gesunde: eine Erkrankung, Schmerz, eine frische Verletzung oder zweifelhafte Gesundheitsfragen brauchen zuerst die Freigabe einer zugelassenen Fachperson.</translation>
    </message>
    <message>
        <source>Four days, barbell and bar</source>
        <translation>Vier Tage, Langhantel und Stange</translation>
    </message>
    <message>
        <source>Four days, holds with bars and rings</source>
        <translation>Vier Tage, Halten, Stangen und Ringe</translation>
    </message>
    <message>
        <source>Front lever, pull-up, hinge</source>
        <translation>Front Lever, Klimmzug, Hüftbeuge</translation>
    </message>
    <message>
        <source>Front lever, row, hinge</source>
        <translation>Front Lever, Rudern, Hüftbeuge</translation>
    </message>
    <message>
        <source>Handstand, squat, push</source>
        <translation>Handstand, Kniebeuge, Drücken</translation>
    </message>
    <message>
        <source>Handstand, squat, row</source>
        <translation>Handstand, Kniebeuge, Rudern</translation>
    </message>
    <message>
        <source>Hinge, dip, row</source>
        <translation>Hüftbeuge, Dip, Rudern</translation>
    </message>
    <message>
        <source>Hinge, lunge, back</source>
        <translation>Hüftbeuge, Ausfallschritt, Rücken</translation>
    </message>
    <message>
        <source>Hinge, press, pull-up</source>
        <translation>Hüftbeuge, Überkopfdrücken, Klimmzug</translation>
    </message>
    <message>
        <source>Hinge, press, row</source>
        <translation>Hüftbeuge, Überkopfdrücken, Rudern</translation>
    </message>
    <message>
        <source>Hinge, push, press</source>
        <translation>Hüftbeuge, Drücken, Überkopfdrücken</translation>
    </message>
    <message>
        <source>Hinge, push, row</source>
        <translation>Hüftbeuge, Drücken, Rudern</translation>
    </message>
    <message>
        <source>L-sit, push, pull-up</source>
        <translation>L-Sitz, Drücken, Klimmzug</translation>
    </message>
    <message>
        <source>Lunge, hinge, press</source>
        <translation>Ausfallschritt, Hüftbeuge, Überkopfdrücken</translation>
    </message>
    <message>
        <source>Planche, dip, squat</source>
        <translation>Planche, Dip, Kniebeuge</translation>
    </message>
    <message>
        <source>Planche, push-up, squat</source>
        <translation>Planche, Liegestütz, Kniebeuge</translation>
    </message>
    <message>
        <source>Press, close push, pull-up</source>
        <translation>Überkopfdrücken, enges Drücken, Klimmzug</translation>
    </message>
    <message>
        <source>Pull-up, row, trunk</source>
        <translation>Klimmzug, Rudern, Rumpf</translation>
    </message>
    <message>
        <source>Push, press, row</source>
        <translation>Drücken, Überkopfdrücken, Rudern</translation>
    </message>
    <message>
        <source>Squat, hinge, lunge</source>
        <translation>Kniebeuge, Hüftbeuge, Ausfallschritt</translation>
    </message>
    <message>
        <source>Squat, push, arms</source>
        <translation>Kniebeuge, Drücken, Arme</translation>
    </message>
    <message>
        <source>Squat, push, pull</source>
        <translation>Kniebeuge, Drücken, Ziehen</translation>
    </message>
    <message>
        <source>Squat, push, pull-up</source>
        <translation>Kniebeuge, Drücken, Klimmzug</translation>
    </message>
    <message>
        <source>Squat, push, row</source>
        <translation>Kniebeuge, Drücken, Rudern</translation>
    </message>
    <message>
        <source>Squat, push, trunk</source>
        <translation>Kniebeuge, Drücken, Rumpf</translation>
    </message>
    <message>
        <source>Squat, push-up, row</source>
        <translation>Kniebeuge, Liegestütz, Rudern</translation>
    </message>
    <message>
        <source>Squat, row, pull-up</source>
        <translation>Kniebeuge, Rudern, Klimmzug</translation>
    </message>
    <message>
        <source>Ten hard sets a week and more for the large muscles, in about an hour a day, with dumbbells and a bench. Arms are trained in turn, to save time. Nothing here pulls from above: add a pull-up as soon as there is a bar. Every load starts light on purpose: set each trainee&apos;s own, or put an assessment first. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Zehn harte Sätze pro Woche und mehr für die großen Muskeln, in etwa einer Stunde am Tag, mit Kurzhanteln und einer Bank. Arme werden im Wechsel trainiert, um Zeit zu sparen. Nichts hier zieht von oben: einen Klimmzug dazunehmen, sobald es eine Stange gibt. Jede Last beginnt mit Absicht leicht: für jede Person eine eigene setzen oder einen Test voranstellen. Jede sechste Woche ist eine Entlastungswoche. Die Spannen sind gängige Praxis. Für Gesunde: eine Erkrankung, Schmerz, eine frische Verletzung oder zweifelhafte Gesundheitsfragen brauchen zuerst die Freigabe einer zugelassenen Fachperson.</translation>
    </message>
    <message>
        <source>Ten hard sets a week and more for the large muscles, spread over five days of about 45 minutes, so that no pattern comes on two days running. It takes barbell, dumbbells, a bench, parallel bars and a bar to hang from, and somebody who recovers well. Every load starts light on purpose: set each trainee&apos;s own, or put an assessment first. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Zehn harte Sätze pro Woche und mehr für die großen Muskeln, auf fünf Tage von etwa 45 Minuten verteilt, sodass kein Muster an zwei Tagen in Folge kommt. Nötig sind Langhantel, Kurzhanteln, eine Bank, ein Barren, eine Stange zum Hängen und gute Erholung. Jede Last beginnt mit Absicht leicht: für jede Person eine eigene setzen oder einen Test voranstellen. Jede sechste Woche ist eine Entlastungswoche. Die Spannen sind gängige Praxis. Für Gesunde: eine Erkrankung, Schmerz, eine frische Verletzung oder zweifelhafte Gesundheitsfragen brauchen zuerst die Freigabe einer zugelassenen Fachperson.</translation>
    </message>
    <message>
        <source>The whole body on each of three days in 45 minutes, for somebody new to it who has a barbell, dumbbells, a bench and a bar to hang from. Repetitions grow before load. Every load starts light on purpose: set each trainee&apos;s own, or put an assessment first. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Der ganze Körper an jedem von drei Tagen in 45 Minuten, für den Einstieg mit Langhantel, Kurzhanteln, einer Bank und einer Stange zum Hängen. Wiederholungen steigen vor der Last. Jede Last beginnt mit Absicht leicht: für jede Person eine eigene setzen oder einen Test voranstellen. Jede sechste Woche ist eine Entlastungswoche. Die Spannen sind gängige Praxis. Für Gesunde: eine Erkrankung, Schmerz, eine frische Verletzung oder zweifelhafte Gesundheitsfragen brauchen zuerst die Freigabe einer zugelassenen Fachperson.</translation>
    </message>
    <message>
        <source>Three days, barbell and bar</source>
        <translation>Drei Tage, Langhantel und Stange</translation>
    </message>
    <message>
        <source>Three days, dumbbells, for size</source>
        <translation>Drei Tage, Kurzhanteln, Muskelaufbau</translation>
    </message>
    <message>
        <source>Three days, holds on floor and bar</source>
        <translation>Drei Tage, Halten, Boden und Stange</translation>
    </message>
    <message>
        <source>Three short days, mixed equipment</source>
        <translation>Drei kurze Tage, gemischt</translation>
    </message>
    <message>
        <source>Two days of squat and hinge, two of push and pull, none of them following one of its kind; about 50 minutes each, with barbell, discs, a bench and a bar to hang from. The second block asks fewer repetitions with more load. Every load starts light on purpose: set each trainee&apos;s own, or put an assessment first. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation>Zwei Tage Kniebeuge und Hüftbeuge, zwei Tage Drücken und Ziehen, keiner folgt auf seinesgleichen; je etwa 50 Minuten, mit Langhantel, Scheiben, einer Bank und einer Stange zum Hängen. Der zweite Block verlangt weniger Wiederholungen mit mehr Last. Jede Last beginnt mit Absicht leicht: für jede Person eine eigene setzen oder einen Test voranstellen. Jede sechste Woche ist eine Entlastungswoche. Die Spannen sind gängige Praxis. Für Gesunde: eine Erkrankung, Schmerz, eine frische Verletzung oder zweifelhafte Gesundheitsfragen brauchen zuerst die Freigabe einer zugelassenen Fachperson.</translation>
    </message>
    <message>
        <source>Two days, bodyweight and a bar</source>
        <translation>Zwei Tage, Körpergewicht und Stange</translation>
    </message>
    <message>
        <source>Two days, dumbbells and a bench</source>
        <translation>Zwei Tage, Kurzhanteln und eine Bank</translation>
    </message>
    <message>
        <source>Two days, no equipment</source>
        <translation>Zwei Tage, ohne Ausstattung</translation>
    </message>
</context>
<context>
    <name>StatusLine</name>
    <message>
        <source>Error: {text}</source>
        <translation>Fehler: {text}</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
</context>
<context>
    <name>StepStrip</name>
    <message>
        <source>Filled: where the trainee stands. Outlined: what comes next.</source>
        <translation>Gefüllt: wo die Person steht. Umrandet: was als Nächstes kommt.</translation>
    </message>
    <message>
        <source>Step strip, empty</source>
        <translation>Schrittleiste, leer</translation>
    </message>
</context>
<context>
    <name>TakeOver</name>
    <message>
        <source>1 trainee has as many sessions there, up to the same day.</source>
        <translation>1 Person hat dort ebenso viele Einheiten, bis zum selben Tag.</translation>
    </message>
    <message>
        <source>There is no trainee in it.</source>
        <translation>Es ist keine Person darin.</translation>
    </message>
    <message>
        <source>no session</source>
        <translation>keine Einheit</translation>
    </message>
    <message>
        <source>{count} trainees have as many sessions there, up to the same day.</source>
        <translation>{count} Personen haben dort ebenso viele Einheiten, bis zum selben Tag.</translation>
    </message>
    <message>
        <source>{name} comes in: {then}</source>
        <translation>{name} kommt dazu: {then}</translation>
    </message>
    <message>
        <source>{name} goes: {now}</source>
        <translation>{name} entfällt: {now}</translation>
    </message>
    <message>
        <source>{name}: {then}, in place of {now}</source>
        <translation>{name}: {then}, an Stelle von {now}</translation>
    </message>
    <message>
        <source>{sessions}, the last of {day}</source>
        <translation>{sessions} bis {day}</translation>
    </message>
</context>
<context>
    <name>TakeOverPanel</name>
    <message>
        <source>Everything in {name}</source>
        <translation>Alles in {name}</translation>
    </message>
    <message>
        <source>It takes the place of all that is in the data file now. What is there now is kept first, as a copy beside the data file that can be opened again.</source>
        <translation>Es tritt an die Stelle von allem, was jetzt in der Datendatei ist. Was jetzt da ist, bleibt zuvor als Kopie neben der Datendatei erhalten, die sich wieder öffnen lässt.</translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation>Lassen</translation>
    </message>
    <message>
        <source>Take it over</source>
        <translation>Übernehmen</translation>
    </message>
    <message>
        <source>Take over everything</source>
        <translation>Alles übernehmen</translation>
    </message>
</context>
<context>
    <name>Terms</name>
    <message>
        <source>Deload: a planned easier week with fewer sets and lighter loads; afterwards all goes on where it stood.</source>
        <translation>Deload: eine geplante Entlastungswoche mit weniger Sätzen und leichteren Lasten; danach geht alles weiter, wo es stand.</translation>
    </message>
    <message>
        <source>Effective load: what the muscles really move; in bodyweight exercises a share of body mass, plus what is added, minus help.</source>
        <translation>Wirksame Last: was die Muskeln wirklich bewegen; bei Übungen mit Körpergewicht ein Anteil davon, plus Zusatz, minus Hilfe.</translation>
    </message>
    <message>
        <source>Hard set: a working set, no warm-up; it counts 1 for a muscle trained directly and 0.5 for one that helps.</source>
        <translation>Harter Satz: ein Arbeitssatz, kein Aufwärmen; er zählt 1 für einen direkt trainierten Muskel und 0,5 für einen, der mithilft.</translation>
    </message>
    <message>
        <source>Monotony: how alike the days of a week are, as the mean of the seven daily loads over their standard deviation.</source>
        <translation>Monotonie: wie ähnlich die Tage einer Woche sind, als Mittel der sieben Tagesbelastungen durch ihre Standardabweichung.</translation>
    </message>
    <message>
        <source>RIR, repetitions in reserve: how many more clean ones would have been possible at the end of the set; blank is unknown, not none.</source>
        <translation>RIR, Wiederholungen in Reserve: wie viele saubere am Ende des Satzes noch möglich gewesen wären; leer heißt unbekannt, nicht keine.</translation>
    </message>
    <message>
        <source>Strain: the week&apos;s training load times its monotony.</source>
        <translation>Beanspruchung: die Trainingsbelastung der Woche mal ihre Monotonie.</translation>
    </message>
    <message>
        <source>Training load: how hard the session was (0 to 10) times its minutes; other activities count too.</source>
        <translation>Trainingsbelastung: wie anstrengend die Einheit war (0 bis 10) mal ihre Minuten; andere Aktivitäten zählen auch.</translation>
    </message>
    <message>
        <source>e1RM, the estimated one-repetition maximum: the load that would go once, reckoned from a set with more repetitions.</source>
        <translation>e1RM, das geschätzte Einwiederholungsmaximum: die Last, die einmal ginge, berechnet aus einem Satz mit mehr Wiederholungen.</translation>
    </message>
</context>
<context>
    <name>Tests</name>
    <message>
        <source>No maximum: clean reps until {reserve} are left</source>
        <translation>Kein Maximum: saubere Wdh, bis {reserve} übrig sind</translation>
    </message>
    <message>
        <source>No maximum: end after the first set with {reserve} or fewer clean reps left</source>
        <translation>Kein Maximum: nach dem ersten Satz mit {reserve} oder weniger sauberen Wdh in Reserve beenden</translation>
    </message>
    <message>
        <source>No maximum: hold while it is clean</source>
        <translation>Kein Maximum: halten, solange es sauber ist</translation>
    </message>
    <message>
        <source>No start could be read: {why}</source>
        <translation>Kein Start ließ sich ablesen: {why}</translation>
    </message>
    <message>
        <source>Read from this test, ± {percent}</source>
        <translation>Aus diesem Test gelesen, ± {percent}</translation>
    </message>
    <message>
        <source>Read from this test; how far off is not known</source>
        <translation>Aus diesem Test gelesen; wie genau, ist nicht bekannt</translation>
    </message>
    <message>
        <source>Starts at {work}</source>
        <translation>Beginnt bei {work}</translation>
    </message>
    <message>
        <source>Test: sets of {amount}, from {first} up to {last}</source>
        <translation>Test: Sätze mit {amount}, von {first} bis {last}</translation>
    </message>
    <message>
        <source>Test: {amount}</source>
        <translation>Test: {amount}</translation>
    </message>
    <message>
        <source>Test: {amount} or more</source>
        <translation>Test: {amount} oder mehr</translation>
    </message>
    <message>
        <source>no start yet</source>
        <translation>noch kein Start</translation>
    </message>
    <message>
        <source>rest {time}</source>
        <translation>Pause {time}</translation>
    </message>
    <message>
        <source>stop at&#xa0;{stop}</source>
        <translation>Schluss bei&#xa0;{stop}</translation>
    </message>
    <message>
        <source>test with reps in reserve</source>
        <translation>Test mit Wdh in Reserve</translation>
    </message>
    <message>
        <source>test: held while it is clean</source>
        <translation>Test: halten, solange es sauber ist</translation>
    </message>
    <message>
        <source>{test} at {load}</source>
        <translation>{test} mit {load}</translation>
    </message>
    <message>
        <source>{test} each side</source>
        <translation>{test} je Seite</translation>
    </message>
    <message>
        <source>{work}, as before</source>
        <translation>{work}, wie bisher</translation>
    </message>
</context>
<context>
    <name>TitleField</name>
    <message>
        <source>Type to rename</source>
        <translation>Tippen benennt um</translation>
    </message>
</context>
<context>
    <name>TraineeForm</name>
    <message>
        <source>A change counts from today on; earlier sessions keep what was there then.</source>
        <translation>Eine Änderung gilt ab heute; frühere Einheiten behalten, was damals da war.</translation>
    </message>
    <message>
        <source>A trainee needs a name.</source>
        <translation>Eine Person braucht einen Namen.</translation>
    </message>
    <message>
        <source>Add {name}</source>
        <translation>{name} hinzufügen</translation>
    </message>
    <message>
        <source>Archive</source>
        <translation>Archivieren</translation>
    </message>
    <message>
        <source>Archive {name}</source>
        <translation>{name} archivieren</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Körpergewicht</translation>
    </message>
    <message>
        <source>Body mass on {day}</source>
        <translation>Körpergewicht am {day}</translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation>Zurückholen</translation>
    </message>
    <message>
        <source>Bring {name} back</source>
        <translation>{name} zurückholen</translation>
    </message>
    <message>
        <source>Change the equipment</source>
        <translation>Ausstattung ändern</translation>
    </message>
    <message>
        <source>Change {name}</source>
        <translation>{name} ändern</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Ausstattung</translation>
    </message>
    <message>
        <source>Health and consent</source>
        <translation>Gesundheit und Einwilligung</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Angaben</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Remove {name} and all sessions</source>
        <translation>{name} und alle Einheiten entfernen</translation>
    </message>
    <message>
        <source>Somebody has this name already.</source>
        <translation>Diesen Namen gibt es schon.</translation>
    </message>
    <message>
        <source>Somebody new</source>
        <translation>Jemand Neues</translation>
    </message>
    <message>
        <source>every change is kept, and can be undone</source>
        <translation>jede Änderung bleibt, widerrufbar</translation>
    </message>
    <message>
        <source>kept as soon as a name stands</source>
        <translation>wird behalten, sobald ein Name steht</translation>
    </message>
</context>
<context>
    <name>TraineeProgram</name>
    <message>
        <source>End {program} for {name}</source>
        <translation>{program} für {name} beenden</translation>
    </message>
    <message>
        <source>Give {program} to {name}</source>
        <translation>{program} an {name} zuweisen</translation>
    </message>
    <message>
        <source>Take back a change for {name}</source>
        <translation>Änderung für {name} zurücknehmen</translation>
    </message>
    <message>
        <source>{exercise}: one more day a week</source>
        <translation>{exercise}: ein Tag mehr pro Woche</translation>
    </message>
    <message>
        <source>{what}, for {name}</source>
        <translation>{what}, für {name}</translation>
    </message>
</context>
<context>
    <name>VariationKeys</name>
    <message>
        <source>active</source>
        <translation>aktiv</translation>
    </message>
    <message>
        <source>archer</source>
        <translation>Bogen</translation>
    </message>
    <message>
        <source>arms back</source>
        <translation>Arme hinten</translation>
    </message>
    <message>
        <source>arms crossed</source>
        <translation>Arme gekreuzt</translation>
    </message>
    <message>
        <source>arms forward</source>
        <translation>Arme vor</translation>
    </message>
    <message>
        <source>arms long</source>
        <translation>Arme lang</translation>
    </message>
    <message>
        <source>arms side</source>
        <translation>Arme hoch</translation>
    </message>
    <message>
        <source>assisted single</source>
        <translation>einb. Stütze</translation>
    </message>
    <message>
        <source>assisted up</source>
        <translation>mit Hilfe</translation>
    </message>
    <message>
        <source>back</source>
        <translation>zurück</translation>
    </message>
    <message>
        <source>backward</source>
        <translation>rückwärts</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>Stange</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>Bank</translation>
    </message>
    <message>
        <source>bench bent</source>
        <translation>Bank, gebeugt</translation>
    </message>
    <message>
        <source>both</source>
        <translation>beide</translation>
    </message>
    <message>
        <source>both step</source>
        <translation>beide, Stufe</translation>
    </message>
    <message>
        <source>box</source>
        <translation>Kasten</translation>
    </message>
    <message>
        <source>box single</source>
        <translation>einb. Kasten</translation>
    </message>
    <message>
        <source>chest</source>
        <translation>Brust</translation>
    </message>
    <message>
        <source>chest wall</source>
        <translation>Brust zur Wand</translation>
    </message>
    <message>
        <source>elbows</source>
        <translation>Ellbogen</translation>
    </message>
    <message>
        <source>feet</source>
        <translation>Füße</translation>
    </message>
    <message>
        <source>feet down</source>
        <translation>Füße unten</translation>
    </message>
    <message>
        <source>feet high</source>
        <translation>Füße hoch</translation>
    </message>
    <message>
        <source>feet raised</source>
        <translation>Füße erhöht</translation>
    </message>
    <message>
        <source>feet wall</source>
        <translation>Füße, Wand</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>fly</source>
        <translation>Arme weit</translation>
    </message>
    <message>
        <source>forward</source>
        <translation>vorwärts</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>full</source>
        <translation>voll</translation>
    </message>
    <message>
        <source>half lay</source>
        <translation>halb gestreckt</translation>
    </message>
    <message>
        <source>half way</source>
        <translation>halb</translation>
    </message>
    <message>
        <source>hands thighs</source>
        <translation>Hände gleiten</translation>
    </message>
    <message>
        <source>heel taps</source>
        <translation>Fersen tippen</translation>
    </message>
    <message>
        <source>heels up</source>
        <translation>Fersen hoch</translation>
    </message>
    <message>
        <source>high</source>
        <translation>hoch</translation>
    </message>
    <message>
        <source>hips bent</source>
        <translation>Hüfte gebeugt</translation>
    </message>
    <message>
        <source>hold top</source>
        <translation>oben halten</translation>
    </message>
    <message>
        <source>hover</source>
        <translation>schweben</translation>
    </message>
    <message>
        <source>jump</source>
        <translation>Sprung</translation>
    </message>
    <message>
        <source>kick wall</source>
        <translation>Rücken zur Wand</translation>
    </message>
    <message>
        <source>knees</source>
        <translation>Knie</translation>
    </message>
    <message>
        <source>knees bent</source>
        <translation>Knie gebeugt</translation>
    </message>
    <message>
        <source>knees high</source>
        <translation>Knie hoch</translation>
    </message>
    <message>
        <source>knees raised</source>
        <translation>Knie, erhöht</translation>
    </message>
    <message>
        <source>knees wall</source>
        <translation>Knie, Wand</translation>
    </message>
    <message>
        <source>lean</source>
        <translation>vorlehnen</translation>
    </message>
    <message>
        <source>lean 15</source>
        <translation>15°</translation>
    </message>
    <message>
        <source>lean 30</source>
        <translation>30°</translation>
    </message>
    <message>
        <source>lean 45</source>
        <translation>45°</translation>
    </message>
    <message>
        <source>lean 60</source>
        <translation>60°</translation>
    </message>
    <message>
        <source>lean 75</source>
        <translation>75°</translation>
    </message>
    <message>
        <source>leaning</source>
        <translation>halb schräg</translation>
    </message>
    <message>
        <source>leg</source>
        <translation>nur Bein</translation>
    </message>
    <message>
        <source>leg up</source>
        <translation>Bein hoch</translation>
    </message>
    <message>
        <source>legs</source>
        <translation>Bein</translation>
    </message>
    <message>
        <source>legs bar</source>
        <translation>zur Stange</translation>
    </message>
    <message>
        <source>legs level</source>
        <translation>waagerecht</translation>
    </message>
    <message>
        <source>legs long</source>
        <translation>Beine lang</translation>
    </message>
    <message>
        <source>level</source>
        <translation>waagerecht</translation>
    </message>
    <message>
        <source>long</source>
        <translation>lang</translation>
    </message>
    <message>
        <source>low</source>
        <translation>fast waager.</translation>
    </message>
    <message>
        <source>lowering</source>
        <translation>absenken</translation>
    </message>
    <message>
        <source>one arm</source>
        <translation>ein Arm</translation>
    </message>
    <message>
        <source>one arm assisted</source>
        <translation>ein Arm, Hilfe</translation>
    </message>
    <message>
        <source>one hand</source>
        <translation>eine Hand</translation>
    </message>
    <message>
        <source>one knee</source>
        <translation>ein Knie</translation>
    </message>
    <message>
        <source>one leg</source>
        <translation>ein Bein</translation>
    </message>
    <message>
        <source>one out</source>
        <translation>einb. hinaus</translation>
    </message>
    <message>
        <source>open tuck</source>
        <translation>offen gehockt</translation>
    </message>
    <message>
        <source>opposite</source>
        <translation>diagonal</translation>
    </message>
    <message>
        <source>pike</source>
        <translation>Hüfte hoch</translation>
    </message>
    <message>
        <source>pike box</source>
        <translation>Hüfte hoch, Kasten</translation>
    </message>
    <message>
        <source>pike raised</source>
        <translation>Hüfte hoch, erhöht</translation>
    </message>
    <message>
        <source>plank</source>
        <translation>Stütz</translation>
    </message>
    <message>
        <source>push off</source>
        <translation>mit Abdruck</translation>
    </message>
    <message>
        <source>raised</source>
        <translation>erhöht</translation>
    </message>
    <message>
        <source>rear raised</source>
        <translation>hinten erhöht</translation>
    </message>
    <message>
        <source>rings</source>
        <translation>Ringe</translation>
    </message>
    <message>
        <source>shoulders raised</source>
        <translation>Schultern erh.</translation>
    </message>
    <message>
        <source>sideways</source>
        <translation>seitwärts</translation>
    </message>
    <message>
        <source>single</source>
        <translation>einbeinig</translation>
    </message>
    <message>
        <source>single raised</source>
        <translation>einb. erhöht</translation>
    </message>
    <message>
        <source>single step</source>
        <translation>einb. Stufe</translation>
    </message>
    <message>
        <source>slow</source>
        <translation>langsam</translation>
    </message>
    <message>
        <source>split</source>
        <translation>versetzt</translation>
    </message>
    <message>
        <source>staggered</source>
        <translation>versetzt</translation>
    </message>
    <message>
        <source>straddle</source>
        <translation>gegrätscht</translation>
    </message>
    <message>
        <source>supported</source>
        <translation>gestützt</translation>
    </message>
    <message>
        <source>table</source>
        <translation>Tisch</translation>
    </message>
    <message>
        <source>toe</source>
        <translation>Zehe</translation>
    </message>
    <message>
        <source>toe pulls</source>
        <translation>Zehen lösen</translation>
    </message>
    <message>
        <source>towel</source>
        <translation>Handtuch</translation>
    </message>
    <message>
        <source>towels</source>
        <translation>Handtücher</translation>
    </message>
    <message>
        <source>tuck</source>
        <translation>gehockt</translation>
    </message>
    <message>
        <source>two up one down</source>
        <translation>2 auf, 1 ab</translation>
    </message>
    <message>
        <source>upright</source>
        <translation>aufrecht</translation>
    </message>
    <message>
        <source>walking</source>
        <translation>im Gehen</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>wall deep</source>
        <translation>Wand, tief</translation>
    </message>
    <message>
        <source>wall lowering</source>
        <translation>Wand, absenken</translation>
    </message>
</context>
<context>
    <name>Ways</name>
    <message>
        <source>Add a day off: from {day} train on {weekday}</source>
        <translation>Ruhetag einlegen: ab {day} am {weekday} trainieren</translation>
    </message>
    <message>
        <source>Back off to {work}</source>
        <translation>Zurücknehmen auf {work}</translation>
    </message>
    <message>
        <source>Deload from {day}</source>
        <translation>Deload ab {day}</translation>
    </message>
    <message>
        <source>Let another variable grow</source>
        <translation>Andere Größe steigen lassen</translation>
    </message>
    <message>
        <source>Let repetitions grow first, from {floor} to {ceiling}</source>
        <translation>Zuerst Wiederholungen steigen lassen, von {floor} bis {ceiling}</translation>
    </message>
    <message>
        <source>Let sets grow too, from {floor} to {ceiling}</source>
        <translation>Auch Sätze steigen lassen, von {floor} bis {ceiling}</translation>
    </message>
    <message>
        <source>Look at the deload</source>
        <translation>Deload ansehen</translation>
    </message>
    <message>
        <source>Look at the program</source>
        <translation>Plan ansehen</translation>
    </message>
    <message>
        <source>Look at the progress</source>
        <translation>Fortschritt ansehen</translation>
    </message>
    <message>
        <source>Look at the rule</source>
        <translation>Regel ansehen</translation>
    </message>
    <message>
        <source>Look at the targets</source>
        <translation>Vorgaben ansehen</translation>
    </message>
    <message>
        <source>Look at the trainee</source>
        <translation>Person ansehen</translation>
    </message>
    <message>
        <source>Look at the week</source>
        <translation>Woche ansehen</translation>
    </message>
    <message>
        <source>Record a clearance</source>
        <translation>Freigabe festhalten</translation>
    </message>
    <message>
        <source>Say what is recorded</source>
        <translation>Angeben, was aufgezeichnet ist</translation>
    </message>
    <message>
        <source>Stay at {work}</source>
        <translation>Bei {work} bleiben</translation>
    </message>
    <message>
        <source>Take another exercise</source>
        <translation>Andere Übung nehmen</translation>
    </message>
</context>
<context>
    <name>Weeks</name>
    <message>
        <source>About {time}.</source>
        <translation>Etwa {time}.</translation>
    </message>
    <message>
        <source>At or above {count} ({of}; {source}).</source>
        <translation>Bei oder über {count} ({of}; {source}).</translation>
    </message>
    <message>
        <source>Hard sets a week</source>
        <translation>Harte Sätze pro Woche</translation>
    </message>
    <message>
        <source>No trend yet says how likely it is.</source>
        <translation>Noch kein Trend sagt, wie wahrscheinlich es ist.</translation>
    </message>
    <message>
        <source>Not trained.</source>
        <translation>Nicht trainiert.</translation>
    </message>
    <message>
        <source>Nothing is planned yet: Return leads to the day.</source>
        <translation>Noch ist nichts geplant: Return führt zum Tag.</translation>
    </message>
    <message>
        <source>Nothing is planned.</source>
        <translation>Nichts ist geplant.</translation>
    </message>
    <message>
        <source>Sets a week</source>
        <translation>Sätze pro Woche</translation>
    </message>
    <message>
        <source>The trainee has {time}.</source>
        <translation>Die Person hat {time}.</translation>
    </message>
    <message>
        <source>The trend expects a maximum of {low} to {high} then (80 % band)</source>
        <translation>Der Trend erwartet dann ein Maximum von {low} bis {high} (80-%-Band)</translation>
    </message>
    <message>
        <source>Under the first published mark of {count}.</source>
        <translation>Unter der ersten veröffentlichten Marke von {count}.</translation>
    </message>
    <message>
        <source>Week {number}</source>
        <translation>Woche {number}</translation>
    </message>
    <message>
        <source>a deload is proposed</source>
        <translation>ein Deload wird vorgeschlagen</translation>
    </message>
    <message>
        <source>by muscle; dotted: published marks at {marks}; hollow: under {least}</source>
        <translation>nach Muskel; gepunktet: veröffentlichte Marken bei {marks}; hohl: unter {least}</translation>
    </message>
    <message>
        <source>by pattern; no published range exists: what counts is the balance</source>
        <translation>nach Muster; eine veröffentlichte Spanne gibt es nicht: es zählt der Ausgleich</translation>
    </message>
    <message>
        <source>deload</source>
        <translation>Deload</translation>
    </message>
    <message>
        <source>deload?</source>
        <translation>Deload?</translation>
    </message>
    <message>
        <source>done: {sets}</source>
        <translation>gemacht: {sets}</translation>
    </message>
    <message>
        <source>from {day}</source>
        <translation>ab {day}</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>nothing was done</source>
        <translation>nichts gemacht</translation>
    </message>
    <message>
        <source>over {share}</source>
        <translation>über {share}</translation>
    </message>
    <message>
        <source>push for each pull</source>
        <translation>Drücken je Ziehen</translation>
    </message>
    <message>
        <source>under {share}</source>
        <translation>unter {share}</translation>
    </message>
    <message>
        <source>upper for each lower</source>
        <translation>oben je unten</translation>
    </message>
    <message>
        <source>{day}: {work} was asked; {done}.</source>
        <translation>{day}: Vorgabe {work}; {done}.</translation>
    </message>
    <message>
        <source>{name}, {count} hard sets.</source>
        <translation>{name}, {count} harte Sätze.</translation>
    </message>
    <message>
        <source>{name}, {count} sets.</source>
        <translation>{name}, {count} Sätze.</translation>
    </message>
    <message>
        <source>{said}; chance to do this: {chance}.</source>
        <translation>{said}; Aussicht, dies zu schaffen: {chance}.</translation>
    </message>
</context>
<context>
    <name>WeeksPage</name>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Program</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>being worked out …</source>
        <translation>wird berechnet …</translation>
    </message>
    <message>
        <source>from the starts of its slots, for nobody yet</source>
        <translation>von den Starts seiner Plätze aus, noch für niemanden</translation>
    </message>
    <message>
        <source>from the starts of its slots, with what {name} has</source>
        <translation>von den Starts seiner Plätze aus, mit der Ausstattung von {name}</translation>
    </message>
    <message>
        <source>from where {name} stands</source>
        <translation>von da, wo {name} steht</translation>
    </message>
    <message>
        <source>weeks ahead</source>
        <translation>Wochen voraus</translation>
    </message>
</context>
<context>
    <name>WeeksTable</name>
    <message>
        <source>Arrows choose a cell, Return leads to its rule.</source>
        <translation>Pfeile wählen eine Zelle, Return führt zu ihrer Regel.</translation>
    </message>
    <message>
        <source>Weeks ahead</source>
        <translation>Wochen voraus</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>1 rep</source>
        <translation>1 Wdh</translation>
    </message>
    <message>
        <source>1 set</source>
        <translation>1 Satz</translation>
    </message>
    <message>
        <source>1 week</source>
        <translation>1 Woche</translation>
    </message>
    <message>
        <source>hold</source>
        <translation>Haltezeit</translation>
    </message>
    <message>
        <source>load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>next {value}</source>
        <translation>nächste {value}</translation>
    </message>
    <message>
        <source>not set</source>
        <translation>nicht gesetzt</translation>
    </message>
    <message>
        <source>of {first} to {last}</source>
        <translation>von {first} bis {last}</translation>
    </message>
    <message>
        <source>once</source>
        <translation>einmal</translation>
    </message>
    <message>
        <source>reps</source>
        <translation>Wdh</translation>
    </message>
    <message>
        <source>sets</source>
        <translation>Sätze</translation>
    </message>
    <message>
        <source>tempo</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>then {variable} moves</source>
        <translation>dann {variable}</translation>
    </message>
    <message>
        <source>twice</source>
        <translation>zweimal</translation>
    </message>
    <message>
        <source>variation</source>
        <translation>Variante</translation>
    </message>
    <message>
        <source>with {load}</source>
        <translation>mit {load}</translation>
    </message>
    <message>
        <source>with {load} of help</source>
        <translation>mit {load} Hilfe</translation>
    </message>
    <message>
        <source>{count} days</source>
        <translation>{count} Tage</translation>
    </message>
    <message>
        <source>{count} min</source>
        <translation>{count} min</translation>
    </message>
    <message>
        <source>{count} reps</source>
        <translation>{count} Wdh</translation>
    </message>
    <message>
        <source>{count} sets</source>
        <translation>{count} Sätze</translation>
    </message>
    <message>
        <source>{count} times</source>
        <translation>{count}-mal</translation>
    </message>
    <message>
        <source>{count} weeks</source>
        <translation>{count} Wochen</translation>
    </message>
    <message>
        <source>{first} and {last}</source>
        <translation>{first} und {last}</translation>
    </message>
    <message>
        <source>{work} at {load}</source>
        <translation>{work} mit {load}</translation>
    </message>
</context>
<context>
    <name>WorkAreas</name>
    <message>
        <source>&amp;Desk</source>
        <translation>Ü&amp;bersicht</translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation>&amp;Import</translation>
    </message>
    <message>
        <source>&amp;Notes</source>
        <translation>&amp;Notizen</translation>
    </message>
    <message>
        <source>&amp;Program</source>
        <translation>&amp;Plan</translation>
    </message>
    <message>
        <source>&amp;Session</source>
        <translation>&amp;Einheit</translation>
    </message>
    <message>
        <source>&amp;Trainee</source>
        <translation>&amp;Person</translation>
    </message>
    <message>
        <source>&amp;Week and load</source>
        <translation>&amp;Woche und Belastung</translation>
    </message>
    <message>
        <source>P&amp;ast</source>
        <translation>&amp;Rückblick</translation>
    </message>
    <message>
        <source>P&amp;rogress</source>
        <translation>&amp;Fortschritt</translation>
    </message>
    <message>
        <source>Rep&amp;orts</source>
        <translation>Beri&amp;chte</translation>
    </message>
    <message>
        <source>S&amp;heet</source>
        <translation>Bl&amp;att</translation>
    </message>
</context>
<context>
    <name>WorkPanel</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Cancelled, nothing is changed.</source>
        <translation>Abgebrochen, nichts ist geändert.</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Wie weit es ist</translation>
    </message>
    <message>
        <source>Rungwise</source>
        <translation>Rungwise</translation>
    </message>
</context>
<context>
    <name>_CandidateList</name>
    <message>
        <source>Exercises found</source>
        <translation>Gefundene Übungen</translation>
    </message>
</context>
<context>
    <name>_FirstSteps</name>
    <message>
        <source>Add a trainee</source>
        <translation>Person hinzufügen</translation>
    </message>
    <message>
        <source>Loads in</source>
        <translation>Lasten in</translation>
    </message>
    <message>
        <source>Open the demo scenario</source>
        <translation>Demo-Szenario öffnen</translation>
    </message>
    <message>
        <source>Start with one person: their name, what they can train with, and when. Then give them a program, print the first sheet, and type what was done.</source>
        <translation>Mit einer Person beginnen: ihr Name, womit sie trainieren kann und wann. Dann einen Plan zuweisen, das erste Blatt drucken und eingeben, was gemacht wurde.</translation>
    </message>
    <message>
        <source>The demo is an invented rowing club in a data file of its own.</source>
        <translation>Die Demo ist ein erfundener Ruderverein in einer eigenen Datendatei.</translation>
    </message>
    <message>
        <source>Unit of loads</source>
        <translation>Maßeinheit der Lasten</translation>
    </message>
    <message>
        <source>each trainee can have their own</source>
        <translation>jede Person kann ihre eigene haben</translation>
    </message>
</context>
<context>
    <name>_Headings</name>
    <message>
        <source>Fastest first</source>
        <translation>Schnell zuerst</translation>
    </message>
    <message>
        <source>by</source>
        <translation>um</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>when a slower one moves</source>
        <translation>wenn eine langsamere steigt</translation>
    </message>
</context>
<context>
    <name>_NameRow</name>
    <message>
        <source>1 line</source>
        <translation>1 Zeile</translation>
    </message>
    <message>
        <source>What is {name}?</source>
        <translation>Was ist {name}?</translation>
    </message>
    <message>
        <source>Which trainee is {name}?</source>
        <translation>Welche Person ist {name}?</translation>
    </message>
    <message>
        <source>a new exercise, like…</source>
        <translation>eine neue Übung, wie…</translation>
    </message>
    <message>
        <source>another exercise…</source>
        <translation>andere Übung…</translation>
    </message>
    <message>
        <source>another trainee…</source>
        <translation>andere Person…</translation>
    </message>
    <message>
        <source>leave its lines out</source>
        <translation>ihre Zeilen weglassen</translation>
    </message>
    <message>
        <source>new on the roster</source>
        <translation>neu auf der Liste</translation>
    </message>
    <message>
        <source>which exercise?</source>
        <translation>welche Übung?</translation>
    </message>
    <message>
        <source>which trainee?</source>
        <translation>welche Person?</translation>
    </message>
    <message>
        <source>{count} lines</source>
        <translation>{count} Zeilen</translation>
    </message>
</context>
<context>
    <name>_Nobody</name>
    <message>
        <source>Choose a trainee</source>
        <translation>Person wählen</translation>
    </message>
    <message>
        <source>Pick one in the roster at the left, or type a name after Ctrl+L.</source>
        <translation>Links in der Liste eine wählen oder nach Strg+L einen Namen eingeben.</translation>
    </message>
</context>
<context>
    <name>_NoteField</name>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
</context>
<context>
    <name>dialog</name>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
</context>
</TS>
