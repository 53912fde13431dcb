<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en_GB">
<context>
    <name>Activities</name>
    <message>
        <source>Day of the activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effort of the activity, 0 to 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes of the activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ActivityRows</name>
    <message>
        <source>Another activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>effort</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>min</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Ahead</name>
    <message>
        <source>If all goes as asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If one in four is missed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Application</name>
    <message>
        <source>Backed up to {path}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Data files (*.db)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Erased from the data file and {count} copies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Erased from the data file and {count} copies; the name still stands in texts of others</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left as they were, without it: {names}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a data file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something went wrong that should not have.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The data file and its backups have a passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The data file and its backups have no passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The data file is damaged: take the newest backup from {folder}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The data file {name} is damaged.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These copies still hold everything: {names}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Went back to the backup; what was there is in {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was saved is safe. The text below helps to mend it; it holds places in the program, and no names or health data.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is locked by a passphrase.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>AssignPanel</name>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give it to {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say when it starts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program has {count} days a week: choose as many weekdays.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Balance</name>
    <message>
        <source>Add {exercise} on {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do {first} and {second} in turn: {saves} min less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the {variable} as they were</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {day} to {weekday}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No {pattern} in the week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take {exercise} off: {saves} min less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower body</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>push</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upper body</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{day} takes {minutes} min, {allowed} are there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{exercise}: {variables} grow at once in this phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} and {other} even, {count} sets each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{one} {first} against {other} {second}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{pattern} on {first} and {second}, no full day between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{pattern} twice on {first}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{push} sets pushed against {pull} pulled</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BalanceBlock</name>
    <message>
        <source>Balance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard sets a week, by muscle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is missing, nothing piles up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing planned yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dotted: published marks at {marks}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CautionBanner</name>
    <message>
        <source>Next ({place} of {count})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the next caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source: {source}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why not now? Return keeps it with the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why this caution is set aside</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CautionPart</name>
    <message>
        <source>Cleared by {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing speaks against asking more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was set aside. A caution that you set aside is kept here with your reason; it comes back when what it rests on changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One caution is open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record the clearance of {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set a caution aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set aside and cleared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something stops the training; it is cleared, never set aside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a caution up again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it up again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take up again: {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is open again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no longer so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stays aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} cautions are open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what} ({who})</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CautionRow</name>
    <message>
        <source>Not now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session of {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source: {source}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why not now? Return keeps it with the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why this caution is set aside</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>65 or older</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>aches were noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clearance needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days much alike</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deload advised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>effort rises at the same work ({effort_before} to {effort_now})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>few sessions a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>large step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>much grew at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>next step too large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no deload for long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no rest day between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not screened yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pain noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pain: decide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>perhaps under 18</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plateau likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>red flag: clearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reps in reserve fall at the same work ({rir_before} to {rir_now})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rule complete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>training load incomplete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wellness is down ({wellness_before} to {wellness_now})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{days} since last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{lines} exercises stand still</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Changes</name>
    <message>
        <source>No trend tells the maximum of {name}: the load is as typed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {day}: moves by {rule}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {day}: starts at {work}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {day}: starts at {work}, by assessment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {day}: starts at {work}, from the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {day}: {work}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} would start at {load} today: {percent} % of about {maximum} (± {off}).</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ChangesList</name>
    <message>
        <source>Change the rule for {name} only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, {change}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ChartBlock</name>
    <message>
        <source>Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard sets a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left and Right go from session to session, + and − show less and more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done over planned</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ChartSaving</name>
    <message>
        <source>Not saved: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as drawing (SVG)…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as picture (PNG)…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the numbers (CSV)…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the numbers (spreadsheet)…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved to {path}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Chooser</name>
    <message>
        <source>Leave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is called like that: try other letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return takes it, Escape leaves</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ClearanceForm</name>
    <message>
        <source>Day of the clearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Licensed professional who cleared the trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needed: the day, today or before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needed: the name of the licensed professional.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record only what a licensed professional said; local rules come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record the clearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>licensed professional</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was said</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Clipboard</name>
    <message>
        <source>1 slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} slots</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ColumnHeader</name>
    <message>
        <source>What {column} holds</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Comparing</name>
    <message>
        <source>Compare {name} with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing any more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a line, a trainee, an earlier time</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Dates</name>
    <message>
        <source>Not a date: write it like {example} or {iso}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DayBlock</name>
    <message>
        <source>Add an exercise to this day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add an exercise: part of its name, and 3 × 8-12 60 if you like</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type part of an exercise&apos;s name, like squ 3 × 8-12 60: Return adds it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DayHead</name>
    <message>
        <source>1 slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return edits the day, Alt with the arrows moves it, Delete removes it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>eight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>four</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing planned yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>six</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the next {count} sessions, if all goes as asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the next {count}, if all goes well</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>three</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} slots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{detail} · in turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{slots} · about {time}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DayLoads</name>
    <message>
        <source>Load by day. {days}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DayPanel</name>
    <message>
        <source>Holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weekday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the day holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in turn, any training day</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Deload</name>
    <message>
        <source>1 exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A deload is due.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A deload is planned from {day} on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A deload runs until {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every 5.6 N{PLUS-MINUS SIGN} 2.3 weeks for 6.4 N{PLUS-MINUS SIGN} 1.7 days, less volume and load, more in reserve, the same exercises and days: survey of 246 competitive athletes, Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y. Less intensity, volume and closeness to failure: Bell 2023, Sports Med Open 9:87, DOI 10.1186/s40798-023-00633-0. Every 4-8 weeks: Bell 2025, Strength Cond J. By how much to cut is published nowhere: the factors are yours. The thresholds of the signs, and two at once, are common practice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More is known by {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No clear difference of performance: {likely} (80 %: {low} to {high})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No session is recorded yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing asks for a deload now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Performance after against before: {likely} (80 %: {low} to {high})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Positions resume where they stood. After these {weeks} every exercise stands where it would stand without it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Positions resume where they stood. If all goes as asked, after these {weeks} {count} of {all} exercises stand elsewhere than without it:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several signs at once speak for a deload soon.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signs seen ({count} of {needed} needed): {told}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signs seen: none of plateaus, wellness down, effort up at the same work, aches.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next deload is due from {day} on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program has a deload from {day} on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too few sessions to say: {before} before and {after} after it are needed of an exercise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>aches noted on {ache_days} of the last 14 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>effort rose from {effort_before} to {effort_now} at no more work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reps in reserve fell from {rir_before} to {rir_now} at the same work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sets {times} {factor}, load {minus} {percent} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wellness fell from {wellness_before} to {wellness_now} (of 5)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{built}; one is proposed every {every}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{built}; the program asks for none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{change} over {lines}; the trend before promised {promised}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} exercises</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{exercise}: {planned} instead of {usual}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{lines} exercises have probably stopped growing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{weeks} of building since {day}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeloadDays</name>
    <message>
        <source>No training is planned in these days, so there is nothing to ease.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it asks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{usual} {arrow} {eased}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeloadList</name>
    <message>
        <source>Before and after are no proof: nobody knows what would have come without it. Strength is the trend of the estimated maximum, up to eight weeks before and four weeks after.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deloads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None yet. Once one is over, here it is told whether it helped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the deload {days}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the signs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{before} before, {after} after</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeloadPart</name>
    <message>
        <source>A week earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A week later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deload {days} for {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ease it so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How deloads ease</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It cannot begin before this week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load lower by percent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move it here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan a deload for {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan this week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the deload from {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets a week, eased over usual; hatched: deload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sources</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weeks after it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a deload already: {days}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These are your settings: they hold for everybody from now on; the weeks between, where no program says how many.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks between, without a program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load lower by %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sets N{MULTIPLICATION SIGN}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weeks between</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeloadWeeks</name>
    <message>
        <source>Deload from {day}. Sets a week: {weeks}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left and right move it by a week, Return plans it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{day}: {sets}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Desk</name>
    <message>
        <source>Course</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days since the last session.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days trained of those planned, in the last four weeks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated maximum of the main line, week by week; hard sets a week where there is none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines that have probably stopped gaining.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plateau</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sorted by need: stops, who trains today, cautions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The most serious caution, or what goes on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next deload: planned, due by the program&apos;s rhythm, or advised by what is seen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next training day of the program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to look at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When the trend reaches the goal, with 80 % certainty.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and {count} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>never</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not in a year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{done} of {planned}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{first} to {last} sets a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{line} +{count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{line} {first} to {last}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeskOverview</name>
    <message>
        <source>1 needs attention</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 trains today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All, who trains today, who needs attention</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filter by any word</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needs attention</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is like that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is on the roster yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the screen that the cell speaks of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print the sheet of the row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet of {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift+Return</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show only rows with these words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody trains today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading records, {known} of {everybody}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} need attention</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} train today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{screen} of {name}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeskTable</name>
    <message>
        <source>Everybody, by need</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DraftPanel</name>
    <message>
        <source>A balanced week from these wishes, each choice explained.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An ordinary program to edit; nothing is saved until you take it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draft a program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draft it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drafting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It does not fit. Trying more days…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It does not fit. Trying more equipment…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It does not fit. Trying more minutes…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It does not fit. Trying to avoid less…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for the week that balances best…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On record for {name}, to avoid: {avoid}. Say it above too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for {name}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DraftResult</name>
    <message>
        <source>No single wish helps if it alone is relaxed: change two of them, such as more minutes and less to avoid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relax one of them; each of these was tried, and leads to a program.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relax this wish and draft again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These wishes cannot be met together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why this week</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DraftWishesBlock</name>
    <message>
        <source>Avoid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes a session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Patterns, exercises, muscles, or words in their names, with commas between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lunge, deadlift, chest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what {name} owns</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Drafts</name>
    <message>
        <source>Allow again: {to}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every {every}th week is a deload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give it {to} a session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Have more equipment: {to}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loads start light: set each trainee&apos;s own, or test first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No deload planned: your call for novices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One day a week; {advised} are advised for adults</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Train on {to} days a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trained on {weekdays}, as far apart as they can be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variations start easy: a test says where to begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advanced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>barbell, bench, a bar to hang from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>barbell, dumbbells, kettlebells, bench, bars, rings, box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dumbbells and a bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>floor and wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>intermediate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no {pattern}: it is to be avoided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no {pattern}: the equipment has nothing for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no {pattern}: there is no time for it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>novice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>skill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strength</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{day}: {first} and {second} in turn, to save time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{day}: {minutes} at first, {most} at the most; {allowed} are there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{exercise}: {fewest} to {most}, rest {rest_s}; grows by {variables}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{exercise}: {fewest} to {most}, {reserve} in reserve, rest {rest_s}; grows by {variables}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{exercise}: {sets} sets on {days} days, for the {pattern}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{exercise}: {sets} sets, for the {pattern}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{muscle}: {sets} of {mark} sets; nothing there trains it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{muscle}: {sets} of {mark} sets; the rest is avoided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{muscle}: {sets} of {mark} sets; there is no time for more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{muscle}: {sets} sets on {days} days; the mark is {mark}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{pattern} on {first} and {second}: no other weekdays are free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{push} sets pushed and {pull} pulled; {upper} of the upper body, {lower} lower</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EffectPanel</name>
    <message>
        <source>Go on typing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This session lies in the past</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EmptyDay</name>
    <message>
        <source>Add an exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next training day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was trained without a plan can be typed all the same.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EquipmentEditor</name>
    <message>
        <source>Bands, measured twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bars to row under</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boxes, chairs, stairs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Collars of a bar, both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Collars of a bar, both, {unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discs (not pairs)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Discs for the handles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dumbbell handles to load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dumbbells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Help of a machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kettlebells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machines with a stack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is also</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vest or belt, loads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bar to hang on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>parallel bars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>straps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wall</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>EraseQuestion</name>
    <message>
        <source>Erase everything of {name}?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Erase for good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything of this person goes from the data file and from every backup and copy of it; a damaged copy, which cannot be rewritten, is removed. Files written elsewhere (sheets, exports) stay. It cannot be undone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the name to go on</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ExerciseChoice</name>
    <message>
        <source>A few letters of its name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add an exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which exercise was done instead?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which variation, from set {number} on?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ExerciseCues</name>
    <message>
        <source>A cup of tea on the lower back would stay full.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All the way up, all the way down, one second at each end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Anchor high, finish with long arms and a short hold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ankles fixed, straight line from knee to head, fall as slowly as you can.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arm beside the ear, elbow locked, short steps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arms long, hands travel in a big arc to the thighs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back against the pad, ribs down, press without arching.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back close to the bench; stop when the upper arms are level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back flat on the pad, knees as wide as the toes point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back flat on the wall, shins upright, hands off the thighs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band behind the back at chest height; stagger the feet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band round the knees, small steps, feet never touch.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band under the feet and behind the neck; bow until the hamstrings stop you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar to the upper chest, hips stay on the bench.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bell between the heels, long spine, squeeze at the top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bell close to the chest, elbows inside the knees at the bottom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bell held at the shoulder; do not lean towards it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bells on the forearms, ribs down, breathe behind the shield.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bells quiet beside the thighs, eyes on the far wall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Big breath, knees follow the toes, stand up as if pushing the floor away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Body like a board; chest to the bar, pause, long arms at the bottom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Breathe out as arm and leg go long; the back stays down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chest glued to the bench, bar touches it from below each time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chest to the ceiling, hips level with the shoulders.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chest up to meet the bar; let the shoulder blades rise again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curl the hips up at the top; no swing between repetitions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curl the ribs towards the hips; the hips stay where they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deep stretch, pause, up onto the big toe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down in a straight line, most of the weight on the front heel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop the back knee straight down; the bar stays level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elbow tucked to the side, turn the forearm out, come back slowly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elbow under the shoulder, lift the lower hip away from the floor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elbows down in front of the ribs, no leaning back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elbows pinned to the ribs; lower slower than you lift.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elbows point up and stay there; lower behind the head.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elbows stay at shoulder height; bend only there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elbows stay high from the first centimetre down to the last one up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eyes on the bell, one position at a time, same way down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fists under the chin, ribs down, sit straight between the feet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fix the trunk like a table; pull the elbows, not the hands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forearms on the thighs; let the weight roll to the fingers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forearms upright all the way; bring the weights down beside the chest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free forearm on the thigh; the trunk does not turn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handles at mid-chest height, shoulder blades stay on the pad.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handles still, turn them out at the top, hips never sag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hands a shoulder&apos;s width apart, elbows close to the ribs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Head travels forward of the hands and back: three points of one triangle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heels close, drive them down, hold a second at the top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinge forward, spread the arms like opening a heavy curtain.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hips and shoulders stay square while the arms go long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hips lead, tail tucked; go only as far as the back stays flat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hips stay high while the heels slide out and back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hips stay on the pad; heels to the seat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold the weight against the breastbone and sit between your heels.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hug a barrel; hands meet in front of the breastbone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kneel under the anchor, pull the elbows into the back pockets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Knees a hand above the floor, hips as still as a table.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Knees out over the toes, hands inside them, hips close to the bar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lead with the elbows, stop at shoulder height.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lean first, lift second; elbows locked and turned forward.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lean in with a straight body; the elbows point forward.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the upper arms come to rest on the floor before each push.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift it like a deadlift, walk it like a full tray.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift the shoulder blades, not the chin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Long arms first, then drive the elbows to the ceiling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Long neck at the bottom, long pause at the top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Long rather than high; look at the floor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower back stays on the pad; stop before it lifts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower the bar behind the forehead, elbows narrow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bounce: a second at the bottom, a second at the top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One step back from the stack, elbows just in front of the ribs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One straight plank from heel to head; the chest arrives first, not the hips.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only the shoulders stay down; lower the body as one board.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open without leaning; close slowly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Palms to you, chest to the bar, all the way down again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pause with the hands at the ribs before letting go slowly.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press the lower back into the floor; if it lifts, shorten the lever.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull high and close, then roll the chest over the hands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull the elbow past the hip without turning the chest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull to the forehead with the elbows high and the thumbs back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Push tall out of the shoulders, ribs in, fingers steer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Push the floor away, lock the elbows, then lift the legs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Push the handle straight out and let nothing turn you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Push the hips back until the hamstrings are long; the bar slides down the thighs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Push through the whole foot; the hips stay square on the seat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quiet steps; the front knee follows the second toe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reach the free heel far behind you; come up as one piece.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ribs down, move the head back for the bar and under it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ribs down, squeeze at the top with the shins upright.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rise until the body is one line, not beyond it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seat so that the handles start at chin height.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the stance once, then move only up and down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short dip, straight down and up; the arms finish what the legs began.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shoulder blades together, bar to the lower chest, feet push the floor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shoulders away from the ears, thumbs round the bar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shoulders away from the ears; down until the upper arm is level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shoulders straight up to the ears, pause, all the way down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sit back onto the box without rocking, pause, stand up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sit over one foot, the other leg long, both heels down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sit tall, shoulder blades first, then the elbows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slide down the side of the thigh; no twist, no hurry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slight bend in the elbows that never changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soft knees, bow from the hips, stop where the back would round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squeeze the free fist; the forearm stays upright all the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand in the middle, grip the centre of the handles, push the floor away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand on the band and keep it tight at the bottom too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand on the band with the ends at the shoulders; push hardest near the top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand on the band, hands at the shoulders, finish beside the ears.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start from long arms, pull the elbows to the ribs, chin over the bar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step long enough that the front shin stays nearly upright.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step through without a stop at the top, tall between steps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight arms press the bar to the hips; the body stays level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight arms, squeeze the shoulder blades as the band meets the chest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight wrist, free arm out to the side for balance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straighten fully, hold one second, control the way down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the slack out of the bar first, then stand up with it close to the legs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tall and quiet: short quick steps, weights still at your sides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The free leg and the trunk tip as one piece, hips square to the floor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hips throw the bell; the arms are ropes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The upper leg lifts you; the lower foot only lets go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thumbs under the breastbone, elbows brush the ribs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thumbs up from start to end, shoulders still.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Toes on the edge, heels sink before every repetition.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuck the tail, squeeze the glutes, keep breathing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the breastbone, not just the arms; heels light.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the palms up on the way, no swing of the hips.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upper arms are posts; only the forearms move.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk as if both hands were full; no lean to either side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk away from the stack, let the cable pull the hips back, snap them forward.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk the feet forward to make it harder; the hips never sag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weights brush the thighs; the hips travel back, not down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weights hang beside the ankles, chest stays open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weights hang still; the front leg does the work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole foot on the box, stand tall on top before coming down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole foot on the floor, knee over the toes, no bounce at the bottom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrists over elbows; finish with the arms beside the ears.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrists over elbows; lower until the upper arms pass the bench.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ExerciseNames</name>
    <message>
        <source>Anti-rotation press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arch hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back extension</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band anti-rotation press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band chest press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band curl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band external rotation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band good morning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band overhead press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band pull-apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band pulldown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band pushdown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band side walk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Barbell curl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Barbell lunge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Barbell shrug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Barbell split squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bench dip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bench press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bench pull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bent-over rear raise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bent-over row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bird dog</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bodyweight lunge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bodyweight single-leg hinge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bodyweight squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cable chest fly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cable crunch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cable curl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cable pull-through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calf raise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chest-supported dumbbell row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chin-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close-grip bench press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close-grip pulldown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close-hands push-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crawl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curl on straps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Curl-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dead bug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deadlift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dumbbell Romanian deadlift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dumbbell bench press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dumbbell calf raise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dumbbell chest fly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dumbbell curl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dumbbell floor press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dumbbell lunge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dumbbell overhead press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dumbbell shrug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dumbbell split squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dumbbell squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dumbbell step-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Face pull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Farmer&apos;s carry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front lever</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front-rack carry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glute bridge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goblet squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Good morning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hammer curl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handstand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handstand push-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hang</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hanging knee and leg raise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hex-bar carry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hex-bar deadlift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hip abduction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hip thrust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hollow hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Incline bench press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Incline dumbbell press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kettlebell carry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kettlebell deadlift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kettlebell floor press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kettlebell front squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kettlebell get-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kettlebell goblet squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kettlebell lunge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kettlebell row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kettlebell swing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kneeling hamstring lowering</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L-sit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lateral raise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leg curl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leg extension</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leg press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lying body lever</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lying triceps extension</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machine chest press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machine shoulder press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Machine squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Muscle-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One-arm dumbbell row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One-arm kettlebell press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overhead carry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overhead press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overhead triceps extension</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planche</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulldown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Push press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Push-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Push-up on straps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reverse plank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rollout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Romanian deadlift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row on straps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row under a bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seated cable row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seated calf raise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seated dumbbell press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seated twist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side bend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side lunge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side plank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Single-leg Romanian deadlift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Single-leg press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sliding leg curl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standing machine calf raise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight-arm pulldown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Suitcase carry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Triceps extension on straps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Triceps pushdown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walking lunge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wall sit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wide-stance deadlift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrist curl</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ExerciseVariations</name>
    <message>
        <source>all the way up, arms crossed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arms beside the ears</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arms crossed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the wall, hands raised for depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the wall, lowering only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back flat, hips at a right angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back leg free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back leg free, arms beside the ears</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back to the wall, heels leaving it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back toe touching the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>backward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body 15° from upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body 30° from upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body 45° from upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body 60° from upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body 75° from upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body half way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body level, arms spread wide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body level, one arm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body near level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body near upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>both feet on a box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>both feet on the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>both hands on towels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>both hands, passive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>both hands, shoulder blades down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>both knees to hip height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>both knees to the chest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>both legs straight and level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>both legs, heels off a step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>both legs, on the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chest and legs up, arms at the ears</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chest and legs up, arms by the sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chest to the bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chest to the wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chest to the wall, toes leaving it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chest up, feet down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chin-up from long arms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dip between bars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dip on rings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>down and up with a light push of the hands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>down and up without hands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>elbows in front of the eyes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feet higher than the shoulders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feet on a box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feet on a box take some weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feet on a box, body level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feet on top of each other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feet one before the other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free standing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the feet, up to a wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the knees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the knees, up to a wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hand on a support</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hands and feet on the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hands on a bench, 43 cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hands on a wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hands slide up the thighs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heels on a box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heels tap the floor, knees bent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hips above the knees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hips bent, hands ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hips high, feet on a box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hips high, feet on the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hips lifted, feet on the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hips on a bench, arms beside the ears</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hips on a bench, knees bent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hips on a bench, legs held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hips on a bench, one leg held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hips over hands, feet on a box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hips straight, knees bent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hold at the top, then lower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>knees bent, arms forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>knees bent, feet near</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>knees bent, like a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>knees off the floor, holding still</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>knees to the chest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leaning forward, toes on the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leg only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>legs apart, straight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>legs straight and together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>legs straight and wide apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>legs straight, above level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>legs straight, arms at the ears</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>legs straight, arms forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>legs straight, heels on the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>legs straight, on the elbows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>legs straight, on the hands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>legs straight, one leg raised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower foot never rests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower foot on its heel, no push</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lowering only, on a bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lowering only, step back up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lying on the floor, chest up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no push, three seconds down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on a bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on forearms and toes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on one arm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on rings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the knees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the knees, hands on a box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one arm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one arm to the side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one arm, other hand on a strap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one foot off the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one hand on a towel over the bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one knee at a time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one leg goes long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one leg straight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one leg straight, arms forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one leg straight, the other tucked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one leg, foot on the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one leg, heel off a step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one leg, on the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one leg, shoulders on a bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opposite arm and leg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opposite arm and leg from a plank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opposite arm and leg go long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opposite arm and leg, five seconds each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out and back on both legs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out and back on one leg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out on one leg, back on both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pull-up from long arms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rear foot on a box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shoulders on a bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sideways</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>single-leg squat to a box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>single-leg squat, full depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>single-leg squat, hand on a support</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slide out only, hips down to return</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>squat on both legs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>squat to a box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>staggered squat, most weight on one leg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>step back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>step back from a step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>step back, hand on a support</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>step forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>straight body, all the way down, push back up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>straight body, down and up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>straight body, half way down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>straight body, lowering only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>straight legs to level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>straight legs to the bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thighs level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thighs level, knees bent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thighs level, on the toes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thighs level, one foot off the floor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top leg raised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up on both legs, down on one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>walking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with a jump, on a low bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with a push of the lower foot</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Exercises</name>
    <message>
        <source>band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>barbell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>biceps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bodyweight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dumbbell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forearms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hamstrings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hinge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>horizontal pull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>horizontal push</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kettlebell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lunge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quadriceps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shoulders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>single joint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>triceps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trunk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upper back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vertical pull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vertical push</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ExportMenu</name>
    <message>
        <source>&amp;Export</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Program {name}…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Training log of {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Training log of {name}…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Training logs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Training logs of &amp;all…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} lines saved to {path}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} saved to {path}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{path} cannot be written: {why}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FloorsRow</name>
    <message>
        <source>Another floor for single variations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begins at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor at {name}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GeneralCaution</name>
    <message>
        <source>Chest pain, fainting, sudden severe pain or numbness: stop and seek medical help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Training can hurt. Targets are for healthy people; those with a condition, pregnancy, recent injury or surgery, or a yes in a health screening need clearance from a licensed professional. Local rules and licensed practice come first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Guide</name>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Guide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pages of the guide</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HealthFields</name>
    <message>
        <source>Answers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clearance by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Consent on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Health screening on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other activities</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a yes: needs clearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all recorded here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>licensed professional</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no to every question</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not asked yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was said</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Import</name>
    <message>
        <source>1 session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brings {what}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brought {what}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing in it can be taken in yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RPE of the set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in {sets}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a training log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a workbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body mass {mass}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>effort of the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>goals: {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>held back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how many sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lines of exercises: {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name of the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new exercises: {names}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new on the roster: {names}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note on the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number of the set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pain, 0-10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refused</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reps in reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reps, or 3x5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seconds held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tempo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unit of the load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>variation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warm-up, yes or no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} body masses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} lines are there already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} other activities</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{kind}, {lines} lines, {columns} columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sets} in {sessions}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{weeks}, {phases} phases, {exercises} exercises</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{work} at {load}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ImportArea</name>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All lines, doubtful ones, refused ones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of it is in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancelled: nothing was taken in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a file to bring in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the lines that are not taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables, programs, trainees (*.csv *.tsv *.txt *.xlsx *.xlsm *.json)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take doubtful lines too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take in {file}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the nearest name for all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taking it in…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is {name}?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before it is taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} lines saved to {path}, each with the reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} lines were not taken. Save them as a file, mend them there, and bring that file in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} is taken in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{file} is taken in. Undo takes all of it out again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is loaded like</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} not taken.csv</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ImportDone</name>
    <message>
        <source>Another file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the lines that were not taken…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the desk</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ImportOptions</name>
    <message>
        <source>All lines are of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Blank date or exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decimal mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep this mapping as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loads without a unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mapping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as guessed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the line above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>either</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kg or lb?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>month first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refused</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ImportPage</name>
    <message>
        <source>? Doubtful {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A few letters of its name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hand back {count}…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the reading is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {number}, {fate}: {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No line is like that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the lines that are not taken as a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take doubtful lines too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>× Refused {count}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ImportTable</name>
    <message>
        <source>Lines of the file</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ImportWelcome</name>
    <message>
        <source>A file dropped on the window opens here too. Nothing is saved until you say so, and one step of Undo takes all of it out again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A training log, a program, trainees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Any table of training</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring in what was written elsewhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CSV, or a workbook (.xlsx). You see what each column was taken for, change it, and read every line before anything is taken in. Sets may stand one in a line, side by side, or together in a cell: 3x5, 5/5/4, BW+10.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop it anywhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files that this program wrote are known at once. A log brings nothing twice, so a longer one can follow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mappings kept: {names}. They are offered for files with the same heading.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>KeyboardMap</name>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Limits</name>
    <message>
        <source>A red flag was noted on {day}: stop, seek medical help, and ask for nothing until a licensed professional&apos;s clearance is recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Born in {birth_year} and perhaps under 18: 1-3 sets of 6-15, on 2-3 days that do not follow each other, form before load, no maximum tests, and supervised.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Born in {birth_year}, so 65 or older: 1-3 sets of 8-12 at 60-80 % of the maximum, on 2-3 days that do not follow each other, and balance work on 3 days a week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard sessions of the pattern {pattern} on {first} and {second} leave no full day between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than one thing grows at once: {variables}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No health screening is recorded: ask the health questions before the first session.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not trained for {days} days, since {last}: start with what was done last, or less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other activities are not recorded, so the training load shown is incomplete.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pain of {pain} out of 10 was noted on {day} (sessions with pain in a row: {times}): nothing is asked until you choose a lighter load, a substitute or a licensed professional&apos;s clearance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pain of {pain} out of 10 was noted on {day}: nothing grows until a session without it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several signs at once speak for a deload: {signals}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The days of the week to {week_ends} were nearly alike (monotony {monotony}): let hard and easy days differ.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The health screening of {day} was not clear: nothing is asked until a licensed professional&apos;s clearance is recorded with name and date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The load rises from {before_g} to {after_g} at once, {over} more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next step that the equipment allows is {over} harder: {reps_needed} repetitions first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rule is complete: add a variable or raise a ceiling, or the same is asked again and again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There has been no deload for {weeks} weeks, since {since}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This has probably stopped growing ({probability} likely): change a variable or plan a deload.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trained less than twice a week: {muscles}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LineChoice</name>
    <message>
        <source>Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LineModel</name>
    <message>
        <source>Is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read as</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LinePlot</name>
    <message>
        <source>body mass {mass} {unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>goal {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Load</name>
    <message>
        <source>Away the whole week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effort of each session or activity (0-10) times its minutes, summed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Incomplete: not every activity of {name} is recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Incomplete: one session has no effort or no minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Incomplete: {count} sessions have no effort or no minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load, monotony and strain: Foster 1998, Med Sci Sports Exerc 30(7):1164-1168; days without an entry count 0; which standard deviation is meant is not said there. Averages over 7 and 28 days, exponentially weighted: Williams 2017, Br J Sports Med 51(3):209-210, DOI 10.1136/bjsports-2016-096589. No ratio of the two is shown: as a sign of injury risk it is criticised (Impellizzeri 2021, Sports Med, DOI 10.1007/s40279-020-01378-6).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Marks of hard sets a week by muscle, as information, not an order:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Monotony</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is recorded this week yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was recorded in this week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions done, of the training days that the program names.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The load so far is {load}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The load so far is {load}; the weeks before had {usual} on average.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mean of the seven daily loads over {deviation}: the more alike the days, the higher.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The week&apos;s load times its monotony.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The week&apos;s load was {load}, as in the weeks before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The week&apos;s load was {load}, {by} less than the weeks before ({usual}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The week&apos;s load was {load}, {by} more than the weeks before ({usual}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The week&apos;s load was {load}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week from {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wellness, 1 bad to 5 good: {told}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working sets done, of those asked or planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a session without effort or minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least {load}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done of planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>effort N{MULTIPLICATION SIGN} minutes, added up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load N{MULTIPLICATION SIGN} monotony</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mean of the days over their deviation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>monotony</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>motivation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sleep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soreness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the population&apos;s standard deviation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sample&apos;s standard deviation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{done} of {planned}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{load} in other activities</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{load} in sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} on {day}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LoadArea</name>
    <message>
        <source>A week earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A week earlier or later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A week later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The deload earlier or later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LoadSteps</name>
    <message>
        <source>A heavier load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A lighter load</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LoadWeek</name>
    <message>
        <source>All activities of {name} are recorded here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effort (0-10) times minutes of each session and of every other activity makes the training load. A week of it shows whether days differ; four weeks show what is usual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard sets by muscle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load by day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other activities</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recorded on {day}, which is not among these weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove {activity}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sixteen weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sources</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the first session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is recorded of {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>average over 7 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dotted: published marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load by day; hard sets by muscle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of this week; they count as load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>other activities</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 28 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} needs a program first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LoadWeeks</name>
    <message>
        <source>Left and right choose a week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{week}. {sentence} {figures}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LockPanel</name>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is not the passphrase.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The window is only hidden: the data file has no passphrase, so anybody can go on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the passphrase to go on.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message>
        <source>Here is what was being typed when the program ended.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On this screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rungwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set a caution aside</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MarkedPanel</name>
    <message>
        <source>1 slot marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reserve of all marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rest of all marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets of all marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unmark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} slots marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Marks</name>
    <message>
        <source>size, the highest band studied</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strength and size, at least</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MassFields</name>
    <message>
        <source>Body mass {unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none entered yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Menus</name>
    <message>
        <source>&amp;Add…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Back up now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Find…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Guide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keyboard map</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Larger text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open data file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Passphrase…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Previous</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Usual text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After {count} minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt and the letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bac&amp;kups…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>E&amp;rase for good…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everywhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock when &amp;idle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Menus</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next part of the screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the &amp;demo scenario</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;maller text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tab</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MoreDaysBlock</name>
    <message>
        <source>Train it on {weekday} too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{names} train by this program too: it changes for all of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{names} trains by this program too: it changes for both.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MuscleBars</name>
    <message>
        <source>Hard sets a week: {sets}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{done} of {planned}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NameHeader</name>
    <message>
        <source>min</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NameQuestions</name>
    <message>
        <source>1 name is not known here. Its lines wait until you say what it means.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All of them are told. They are kept with the mapping.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Names</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nearest for all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} names are not known here. Their lines wait until you say what they mean.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NextTime</name>
    <message>
        <source>Next time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No exercise was recorded.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NoProgress</name>
    <message>
        <source>Choose a program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every session typed becomes a point. Four of them, two weeks apart or more, make a trend: how much a week, how sure that is, and when a goal comes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to show of {name} yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the first session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} needs a program first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NoSheet</name>
    <message>
        <source>Next day of training: {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sheet for this day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the program</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Notes</name>
    <message>
        <source>1 question is open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exercises that wait for an answer are left out: {count}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many were left in reserve: “{said}”?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many, or how long: “{said}”?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How was it set up: “{said}”?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In which unit is “{said}”?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is the comma in “{said}” a decimal mark?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is “{said}” a load or an effort?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On record already: {count}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts not read: {count}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save {count} sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say it in the text at the left, or leave it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two sets, or left and right: “{said}”?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What do the numbers mean in “{said}”?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What does “{said}” belong to?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is meant again by “{said}”?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where was the pain: “{said}”?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which day is “{said}”?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which exercise is “{said}”?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which exercise?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which line of it is meant by “{said}”?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which number is which in “{said}”?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which number of “{said}” was done?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With which load: “{said}”?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the load into the text, or leave it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another exercise…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as it was read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bar at {height}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feet on {height}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hands on {height}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept as a note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none of them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read as a mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read as an exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read as the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read as what was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line without a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warm-up {work}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} in reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} questions are open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sets} on {days}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{work} at ?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{work} at {load}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NotesArea</name>
    <message>
        <source>A few letters of its name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look it over, and save it with Ctrl+Return.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next question, the one before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Question {number} of {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved {sets} on {count} days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take an answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take over notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take over what is certain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text (*.txt *.md)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The session of {day} is being typed: save or clear it first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which exercise is meant?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>here: {word}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NotesPage</name>
    <message>
        <source>Day of what stands under no date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a text…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste what was written, as it was written:

Mon 23 Nov
squat 3x5 60kg
bench 45 8,8,7 rpe 8
push ups 12/10/9</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is read appears here, day by day, before anything is saved. What is doubtful is asked; words that nothing came of stay visible in the text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>underlined: read   waved: doubtful   dashed: not read</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NotesProposal</name>
    <message>
        <source>= on record already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>? doubtful</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>? which day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answer the question about {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N{CHECK MARK} certain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N{EN DASH} left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which day is it?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: choose another exercise</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NotesQuestions</name>
    <message>
        <source>Answer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NotesText</name>
    <message>
        <source>Notes of the trainee</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Notice</name>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Details</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rungwise</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Numbers</name>
    <message>
        <source>A whole number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allowed: {least} to {most}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most {decimals} places after the decimal mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most {most} {unit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Needed: {least} to {most}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No separators between thousands: write 1250.5 or 1250,5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not a number: digits, and one decimal point or comma.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The other decimal mark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thousands or a decimal? Write it without the mark, or with two places after it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value}: is this meant?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>OutcomeBlock</name>
    <message>
        <source>Set otherwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{exercise}: set the next target otherwise</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>OutcomeFoot</name>
    <message>
        <source>Back to the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next: {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo saving</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Outcomes</name>
    <message>
        <source>as asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done, not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fewer sets, each as asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less than asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less than asked, but more than last time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more than asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not done</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PaperOutput</name>
    <message>
        <source>Report saved to {path}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Report sent to {printer}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer did not take the report.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ParcelPage</name>
    <message>
        <source>Another file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it in</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PassphraseChange</name>
    <message>
        <source>At least {count} letters; several words are good.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passphrase of the data file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the passphrase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The two are not the same.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With a passphrase the data file and all its backups are encrypted; they are written anew now. Nobody can open them without it, and nobody can help if it is forgotten: write it down and keep it where the file is not.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PassphraseQuestion</name>
    <message>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Passphrase</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Past</name>
    <message>
        <source>Add an exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best of {line}: {change}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both stand on {days}: their sets come together there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change them all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corrected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every set of both is kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join the session of {other} into that of {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the session of {day} to {other}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New caution: {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No longer a caution: {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No target, best or caution changes: what is asked rests on the same work.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One is counted and the other is held: choose one measured alike.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the session of {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some sets were done with help: choose a bodyweight exercise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is the exercise they are recorded as.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variations of {count} sets are unknown to the other exercise and go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at {load}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day {change}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>effort {change}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minutes {change}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not saved yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note {change}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pain {pain}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>red flag {change}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wellness {change}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amounts} s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} sessions of {line} become {other}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{done} {when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{line}, {day}: {change}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} taken out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, note {change}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, number of sets {change}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, set {number}: {change}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PastArea</name>
    <message>
        <source>A few letters, or the arrow keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another exercise, in all sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done. Undo takes it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exercise, day or note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join with another session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join with which session? It goes into the one chosen in the list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move to another date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No other session lies within three days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No session holds all of these words. Escape shows them all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is on record yet. Sessions typed in the session form, read from notes or imported stand here, the latest first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search the sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which exercise was another one, in all sessions?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} of {all} sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{line}: which exercise was it?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PastDate</name>
    <message>
        <source>Leave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On which day was it done?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day on which it was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This day has not come yet: today at the latest.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PastModel</name>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PastTable</name>
    <message>
        <source>Sessions on record</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PersonFields</name>
    <message>
        <source>Days to train</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Experience</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes a session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sex, for body segments only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stature cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit of loads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to avoid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Year of birth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>advanced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>female</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>intermediate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>male</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>novice</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PhaseLine</name>
    <message>
        <source>Left and right choose a phase, Return edits it, Alt with them moves it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phase {place} of {count}: {name}, {weeks}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>week {number}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PhasePanel</name>
    <message>
        <source>Add a deload week after it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a phase after it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a test week after it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename the phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks of the phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the phase is for</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Phases</name>
    <message>
        <source>assess</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>build</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deload</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlacePanel</name>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PositionEditor</name>
    <message>
        <source>Leave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seconds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set it so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why the position is set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why? It is kept with the line</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProgramActs</name>
    <message>
        <source>Add a deload week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a training day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate {phase}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mend the balance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {phase}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a test week first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re-test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove {phase}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>duplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{exercise}: {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{old} becomes {new}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{old} becomes {new} everywhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{weekday} is taken: choose another one, or move that day first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProgramClipboard</name>
    <message>
        <source>Nothing was copied yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what} copied; Ctrl+V pastes it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProgramEditor</name>
    <message>
        <source>Build</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draft {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is removed; Undo brings it back.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProgramHead</name>
    <message>
        <source>End</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End for {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give to {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Programs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a test week first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test again at the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} started on {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} starts on {day}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProgramKeys</name>
    <message>
        <source>Add a training day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All programs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy what is marked, a slot, a day or a phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draft a program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier or later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit a slot, a day or a phase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exchange the exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark a slot, or all of a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark everything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark this and the next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste, also into another program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print or save as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a test week first, or test again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace an exercise everywhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks ahead</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProgramMarks</name>
    <message>
        <source>Remove {count} slots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} slots: {what}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProgramPage</name>
    <message>
        <source>Add a training day</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProgramPrint</name>
    <message>
        <source>Hard sets in week {number}: {sets}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the starts of its slots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>targets if all goes as asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>week {first}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weeks {first} to {last}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} · about {time}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProgramPrinting</name>
    <message>
        <source>Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Program saved to {path}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Program sent to {printer}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer did not take the program.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProgramShelf</name>
    <message>
        <source>A program holds phases of some weeks, a phase its training days, a day its exercises. Each exercise gets a rule that says what grows next. Begin with a blank one, have one drafted from days, minutes and equipment, or load one that ships; each becomes yours to edit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draft a program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load a starter program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load the starter program {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No program yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Programs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it becomes an ordinary program to edit</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Programs</name>
    <message>
        <source>1 day a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} days a week</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Progress</name>
    <message>
        <source>% of body mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>% of the full position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A plateau is likely ({share}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A plateau is possible ({share}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A plateau is unlikely ({share}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A plateau is very likely ({share}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A trend needs two weeks: from {day} on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A year earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All other variations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best so far ({day}): {done}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down {gain} a week (80 %: {low} to {high}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effective load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated maximum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Four</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goal: {goal}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last done {days} ago.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level: {gain} a week (80 %: {low} to {high}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No gain is to be seen ({share}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now: {own} {here} {unit}, {other} {there} {unit}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of body mass: {own} {here} %, {other} {there} %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more session makes a trend.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reps at a load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions of deload or pain make no trend.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Such sets give no estimate of the maximum, so no trend.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {weeks} before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These {weeks}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trainee: {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up {gain} a week (80 %: {low} to {high}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variation: {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variations known by their order alone make no trend.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week of {day}: {done} hard sets, none planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week of {day}: {done} of {planned} hard sets planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which of the two gains faster is open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>best set, load × reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>best so far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>effective load {load}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimated one-repetition maximum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimated {load} (80 %: {low} to {high})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>estimated {load}, uncertain (80 %: {low} to {high})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>goal {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>highest effective load of a session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>highest load of a session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hold of the best set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>injured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load × reps {work}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moment of the best set, as a share of the full position</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>most reps of a set at one load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pain {pain} of 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>paler: deload or pain, not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reps at {load}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reps of the best set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>variation of the best set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} in reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} more sessions make a trend.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{day}: {done}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{first}, {second} a week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{goal} (wanted by {day})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{goal} between {first} and {last}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{goal} by {last}, perhaps already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{goal} is reached.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{goal} may be reached, or not within a year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{goal}: not within a year at this rate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{goal}: {first} at the earliest, perhaps not within a year.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} down {gain}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} gains faster ({share}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} has nothing of this to show.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} has too few sessions for a trend.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} perhaps gains faster ({share}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} up {gain}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: no session.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: {first} {arrow} {last} {unit} ({change}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: {sessions}, first {first}, best {best}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{signs} 11 reps and more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{signs} 11 reps and more, uncertain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{signs} uncertain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{signs} uncertain, reserve not told</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>■ up to 5 reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ pain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>◇ – – {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>● 6 to 10 reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>★ best so far</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProgressArea</name>
    <message>
        <source>1 year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A lighter or heavier load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt+Down, Alt+Up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare with something</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First and last session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From session to session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard sets a week, done over planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Home, End</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left, Right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Less and more of the time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous and next line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Span</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table, body mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProgressTable</name>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RIR</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions of the chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Proposals</name>
    <message>
        <source>Choose what to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the progress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the targets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan a deload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record the clearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record the screening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say what grows next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say what is recorded</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RangeRow</name>
    <message>
        <source>Faster</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In steps of {by} from {floor}: allowed is {below} or {above}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say how far: only the slowest may go on without an end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hardest is easier than the easiest: exchange them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To {ceiling} is below from {floor}: allowed is {floor} and more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>easiest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hardest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the easiest there is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the hardest there is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}: when a slower one moves</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RangeRows</name>
    <message>
        <source>A floor lies above to {ceiling}: allowed is up to that.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Reasons</name>
    <message>
        <source> on {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(about {share_before} becomes {share_after} of body mass, ± {plus_minus})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>({share_before} becomes {share_after} of body mass)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A deload is not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A start is needed: assess, or enter one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A test is not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A test, no maximum: loads rise; stop after the first set with {stop_rir} or fewer clean repetitions left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A test, no maximum: stop while the position is still clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A test, no maximum: stop with {stop_rir} clean repetitions left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Again, and note the reps in reserve: {needed} are needed to go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All sets as asked{on_day}: now {after}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As asked {streak} of {needed} times in a row: once more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As asked{on_day}: slower, {after} a repetition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As asked{on_day}: {before} becomes {after}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the same place twice in {weeks} weeks: a deload or another variable</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cleared by a licensed professional: goes on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deload: sets times {sets_factor}, {load_percent} % lighter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done above what was asked: {before_g} becomes {after_g}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done while nothing was asked: not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done, but hard: {rir} reps in reserve where {target_rir} were meant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every set reached {before}{on_day}: now {after}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the re-test{on_day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held {before} in every set{on_day}: now {after}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Less than asked ({streak} of {allowed} in a row): the same again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missed {misses} in a row, and nothing easier can be set up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missed {misses} in a row: {variable} back, {before} becomes {after}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New range: {before} becomes {after}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not done the last time: the same again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is asked until a licensed professional&apos;s clearance is recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pain {pain} of 10: no increase</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pain {pain} of 10: not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pain {pain} of 10: nothing is asked until you choose lighter, a substitute or a clearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready for one more day, but {weekdays} leave no full day between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready for one more day: {weekday}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set by the coach{on_day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set by the coach{on_day}: {note}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start from a test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The rule is at its end: say what should grow next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The start by what was done before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The start corrected: {before_g} becomes {after_g}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The start that the coach set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The start that the program gives</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top of the range at {amount}{on_day}: {before} becomes {after}, from {restart}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top of the range{on_day}: {before} becomes {after}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the first session may correct it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the first {count} sessions may correct it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{after} is {over} more, too large a jump for now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{after} is {over} more, too large a jump: {reps_needed} reps here first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{before_g} cannot be made with the equipment: {after_g}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{before} cannot be set up with the equipment: {after}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{days} since the last time: a new start is needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{days} since the last time: from the bottom of the range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{days} since the last time: one variation easier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{days} since the last time: the last again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{days} since the last time: {percent} % lighter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{done_g} was done, far above what was asked: taken up to {limit_g}. Is it right?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{done} in the last set, {needed} needed to go on: the same again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{done} of {asked} sets done: the same again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % of the main line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % of {line}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{rir} reps in reserve, {needed} needed to go on: the same again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{total} in all, {before} the last time: the same again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Record</name>
    <message>
        <source>Look at it again, then repeat the change.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RedFlagBanner</name>
    <message>
        <source>Nothing is asked of this trainee until a licensed professional&apos;s clearance is recorded with name and date.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReplaceBar</name>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replace everywhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The exercise to put in its place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The exercise to replace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with: part of its name</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>Ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All trainees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best set, better than ever</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart: {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart: {what}, {unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coach&apos;s report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days trained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down: {lines}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimates from load and repetitions: square up to 5 reps, disc 6 to 10, ring 11 and more or uncertain; grey not counted; star best so far. Line and band: trend with 80 % band, dashed where it is only foreseen. Bars: hard sets a week, outlined as planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goal: {line}, {goal}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard sets a week by muscle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard sets a week, everybody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Highest load of a best set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next session: {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not trained</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned days kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Progress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Progress report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions with pain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source: {source}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be careful about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too few sessions to tell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trainees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trainees to be careful about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trainees with a line going up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up and down: the 80 % band of the trend lies on one side of level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up: {lines}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level or open: {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{done} of {planned}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{done} of {planned} planned ({share})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{done}, {planned} planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{first} to {last}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{goal} by {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{hours} h {minutes} min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sessions} sessions, {sets} hard sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sets} a week: {what} ({source})</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ReportArea</name>
    <message>
        <source>1 page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a trainee in the roster, or everybody.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everybody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Given up. Choose a span to begin again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larger, smaller, whole page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Numbers…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of whom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One trainee, everybody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Preview of the report</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Progress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading everybody&apos;s record: {share}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading everybody&apos;s record…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reports</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the numbers…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved to {path}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Span</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} did not train in this span: choose other days.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Roster</name>
    <message>
        <source>1 trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a trainee by name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Roster</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deload from {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>due today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>injured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>next {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} trainees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{days} since last</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RuleEditor</name>
    <message>
        <source>%</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A step when</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back off by percent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follows another line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the sets relate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let grow too:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lighter sets lower by percent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Misses in a row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moves by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Percent of the line followed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repetitions over in the last set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So many times in a row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What gets easier after misses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how sets relate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in a row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its own rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>misses in a row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>range of the rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the main line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what follows misses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what it follows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when it steps</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RuleExtras</name>
    <message>
        <source>% of body mass more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A harder variation is at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most so many days a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more day a week after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more day a week after so many steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more day a week after so many weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smallest step of the variation, in percent of body mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one more day a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smallest step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steps or</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weeks, up to</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Rules</name>
    <message>
        <source>All sets together reach a total, however they fall; then it gets harder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each repetition gets slower first, then there are more, then it gets harder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing grows: sets, repetitions and load stay until you change them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repetitions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repetitions grow first, then a set is added, then the load takes a step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repetitions grow to the top of the range, then the load takes a step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repetitions grow to the top of the range, then the variation gets harder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seconds grow to the top of the range, then the load takes a step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seconds grow to the top of the range, then the variation gets harder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tempo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same sets and repetitions; the load grows each time all are done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Total repetitions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What stands first grows first; the next one when it is full.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a rule of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a top set, then lighter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a total, split freely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all alike</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all sets are done as asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ascending to the last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hold, then a harder variation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hold, then load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>linear loading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>matches the demand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one more is left in reserve than meant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repetitions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repetitions, sets, then load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repetitions, then a harder variation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repetitions, then load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slow tempo first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>starts again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the last set goes over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the total is reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>total repetitions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>variation</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SafeKeeping</name>
    <message>
        <source>1 other fact goes, comes back or changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Going back to it would change:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In it: {trainees}, {sessions}, the last of {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In it: {trainees}, {sessions}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It holds the same as the present file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Programs change back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The present file cannot be read, so it cannot be compared with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} other facts go, come back or change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} trainees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sessions} as they were before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sessions} come back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sessions} lost</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SafeKeepingPanel</name>
    <message>
        <source>A copy of everything is made on closing, and kept for the last 7 days, 4 weeks and 12 months. The copies lie in {folder}. What is there now is copied before anything is put in its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backups</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backups, the newest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back to this backup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no backup yet.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <source>0 or more: help is typed for bodyweight only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A rest day: nothing is planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add an activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add an exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Away on this day: nothing is asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Correct session of {name}, {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effort</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effort of the other activity, 0 to 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effort of the session, 0 to 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How hard, 0 to 10? Name, minutes, effort: all three.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many minutes? Name, minutes, effort: all three.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many? Type 0 if none was clean.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left and right, like 8/7.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes of the other activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Motivation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Motivation, 1 bad to 5 good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No program is assigned to this trainee.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No target changes: training went on as asked, and that still stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note on the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is asked until a licensed professional&apos;s clearance is recorded with name and date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One number: both sides work at once here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other activity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove session of {name}, {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session of {name}, {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set {exercise} otherwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sleep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sleep, 1 bad to 5 good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soreness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soreness, 1 bad to 5 good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stress, 1 bad to 5 good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program has ended: assign the next one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program has not started yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which activity? Its minutes or effort are typed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which load? None was asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>best {work}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load in {unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not judged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not planned yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pain 0-10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pain, 0 to 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recorded, changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repetitions done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repetitions in reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seconds held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with {count} in reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} less than asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} more than asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{day} {name} {minutes}, effort {effort}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{exercise}, set {number}, {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{program}, week {week} of {weeks}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text}, deload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{unit} are typed here: that is {value}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{unit} are typed here: that is {value}. Return again takes it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{value} against {asked}: Return again if it is meant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{work} again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SessionFoot</name>
    <message>
        <source>1 bad, 5 good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Body mass, sleep, soreness, stress, motivation, other activities, red flags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exercise as asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Extra set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note on the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Red flag: chest pain, fainting, sudden severe pain or numbness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set as asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cycling, a match</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>training load {load}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SessionForm</name>
    <message>
        <source>Nothing is typed yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Removed. Undo brings it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This day has not come yet: today at the latest.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SessionHeading</name>
    <message>
        <source>All as asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day of the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next day: Alt+Page Down. Training day: Ctrl+Page Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous day: Alt+Page Up. Training day: Ctrl+Page Up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today: Alt+Home</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SessionKeys</name>
    <message>
        <source>Add an exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All as asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Body mass, wellness, other activity, red flag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear a cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop a set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exercise as asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Extra set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to a date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load, where none is asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next exercise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next session on record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next training day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One more session on this day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Other variation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save; then next trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search the past</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set as asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take typing back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm-up set</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SessionTyping</name>
    <message>
        <source>Instead: {exercise}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was asked of this set: type what was done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This exercise has no variations.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SessionWay</name>
    <message>
        <source>No further session is on record.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no further training day.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source> on {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, with collars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best: {work}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clean: in the form agreed; only these count. Reserve: how many more would have been clean. Pain: 0 to 10; where it grows, stop that exercise and tell your coach. Effort of the whole session: 0 rest, 10 the hardest ever. 1-5: 1 bad, 5 good.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First set: as many clean reps as you can, stop atN{NO-BREAK SPACE}{stop}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In between, if your coach agrees: {ways}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last set: as many clean reps as you can, stop atN{NO-BREAK SPACE}{stop}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last set: hold as long as it is clean, stop atN{NO-BREAK SPACE}{stop}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last time, {day}: {work}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No font is installed on this computer: a sheet needs one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is asked anything on {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not asked: pain {pain} of 10{on_day}; ask your coach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not asked: {days} since the last time; ask your coach where to start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not asked: {why}; ask your coach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not set yet: ask your coach where to start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is asked of {name} on {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is asked of {name} until a licensed professional&apos;s clearance is recorded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program of {name} has ended before {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program of {name} has not begun on {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet cannot be written to {path}: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upper boxes: clean repetitions or seconds of each set, under what is asked. Lower boxes: the load where it was another, how many more would have been clean, pain 0 to 10; where pain grows, stop that exercise and tell your coach.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warm-up {ramp}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {minutes}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>band: {band}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body mass {unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dumbbell handle alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dumbbell handle: {discs} at each end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>effort 0-10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {first}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>help of {band}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in turn with {others}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load {unit}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>motivation 1-5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one more rep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one more set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page {number} of {count}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rest {clock}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seconds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sleep 1-5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smaller discs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soreness 1-5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stress 1-5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tempo {tempo}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>then {work}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to {last}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>week {week} of {weeks}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{amount} in {sets}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bar} alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{bar}: {discs} a side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} in reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} trainees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{day} is a rest day of {name}: nothing is asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{load}, {loading}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} has no program: assign one, and its days can be printed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is away on {day}: nothing is asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{ramp} each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{reps} without load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{seconds} a repetition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{sets}, each side,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{stack}: pin at {load}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{stack}: pin at {load}, with the small plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{work} each side</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SheetArea</name>
    <message>
        <source>1 page. Boxes are left blank for the pencil.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day of the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to a date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larger  +</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next day of training</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next day of training: Ctrl+Page Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous day of training</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Previous day of training: Ctrl+Page Up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet saved to {path}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet sent to {printer}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smaller  −</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The group</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The group, or this trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer did not take the sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole page  0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whose sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} pages. Boxes are left blank for the pencil.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} train on this day; save and next follows the sheet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SheetPreview</name>
    <message>
        <source>Preview of the sheet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ShelfRow</name>
    <message>
        <source>Ctrl+D</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Return</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{action}: {name}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SlotBlock</name>
    <message>
        <source>Not planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{exercise}, note</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SlotFields</name>
    <message>
        <source>A name tells two lines of one exercise apart, such as heavy and light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter of slots done in turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load at the start as a percentage of the maximum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note for the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckoned once, from the trend on the day the program is given; without a trend the load beside it holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repetitions at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repetitions in reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rest after a set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seconds a repetition at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seconds each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start: sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tempo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tempo: seconds down, held, up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The start lies outside the rule&apos;s {floor} to {ceiling}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Variation at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hold s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name of the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>or % of max</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slots in turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tempo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the only one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>variation</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SlotPanel</name>
    <message>
        <source>Another exercise here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exchange the exercise of this slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SlotRow</name>
    <message>
        <source>Return edits, Space marks, Alt with the arrows moves, Delete removes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>marked</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SlotSheet</name>
    <message>
        <source>asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warm-up</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Slots</name>
    <message>
        <source>changed for {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in turn {letter}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rest {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rolls over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tempo {tempo}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the main line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} in all over {sets}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} in reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{percent} % of {line}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{time} a repetition</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Sources</name>
    <message>
        <source>48 h between sessions for the same muscles, guideline quoted second-hand; sets to failure delay recovery by 24-48 h: Morán-Navarro 2017, Eur J Appl Physiol 117(12):2387-2399</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ACSM 2009, Med Sci Sports Exerc 41(3):687-708: raise the load by 2-10 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bell 2025, Strength Cond J (review): every 4-8 weeks; Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y (survey of competitive athletes): every 5.6 ± 2.3 weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Iversen 2021, Sports Med 51(10):2079-2095</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Miller 2010, Pediatr Clin N Am 57(3):671-682; supervision and no maximum tests: common practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Schoenfeld 2017, J Sports Sci 35(11):1073-1082, DOI 10.1080/02640414.2016.1210197</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WHO 2020, Guidelines on physical activity and sedentary behaviour (quoted second-hand): all major muscle groups on 2 or more days a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice; no significant loss was seen after 3 weeks off: Ogasawara 2011</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>monotony as in Foster 1998, Med Sci Sports Exerc 30(7):1164-1168; the limit of 2 is second-hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>published guidance for older adults; WHO 2020, Guidelines on physical activity and sedentary behaviour (quoted second-hand)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>triggers named in Rogerson 2024, Sports Med Open 10:26, DOI 10.1186/s40798-024-00691-y (stall, soreness, aches); two at once: common practice</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Starters</name>
    <message>
        <source>A first year of holds: handstand against the wall, L-sit, hanging, each while fresh, then push-ups, rows and legs. It takes a wall, a box, a bar to hang from and a low one to row under; about 45 minutes. Repetitions or seconds grow first, then the variation gets harder. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bodyweight alone, with one bar to hang from and one at hip height. Repetitions grow first, then the variation gets harder. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Build</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deadlift, front squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Five days, mixed equipment, for size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Floor space and a wall, nothing else. Pulling needs something to pull on, so this has none: add a row or a pull-up as soon as there is a bar. Repetitions or seconds grow first, then the variation gets harder. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For somebody new to it who owns a few pairs of dumbbells and a bench. Both days train the whole body; each takes about 45 minutes. Nothing here pulls from above: add a pull-up as soon as there is a bar. Repetitions grow before load. Every load starts light on purpose: set each trainee&apos;s own, or put an assessment first. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For somebody who has five clean pull-ups and dips: planche and front lever on turning days, each while fresh, then pulls, pushes and legs. It takes a bar, parallel bars, rings, a low bar and a box; about 45 minutes. Wrists and elbows need weeks, not days, to get used to straight-arm work: repeat a hold that aches. Repetitions or seconds grow first, then the variation gets harder. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For somebody who owns a barbell, discs, a bench and a bar to hang from. Every load starts at the bare bar: set each trainee&apos;s own start first. Repetitions grow before load; bodyweight exercises move to a harder variation. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Four days, barbell and bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Four days, holds with bars and rings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front lever, pull-up, hinge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front lever, row, hinge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handstand, squat, push</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handstand, squat, row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinge, dip, row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinge, lunge, back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinge, press, pull-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinge, press, row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinge, push, press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hinge, push, row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L-sit, push, pull-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lunge, hinge, press</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planche, dip, squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planche, push-up, squat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Press, close push, pull-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull-up, row, trunk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Push, press, row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squat, hinge, lunge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squat, push, arms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squat, push, pull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squat, push, pull-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squat, push, row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squat, push, trunk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squat, push-up, row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Squat, row, pull-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ten hard sets a week and more for the large muscles, in about an hour a day, with dumbbells and a bench. Arms are trained in turn, to save time. Nothing here pulls from above: add a pull-up as soon as there is a bar. Every load starts light on purpose: set each trainee&apos;s own, or put an assessment first. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ten hard sets a week and more for the large muscles, spread over five days of about 45 minutes, so that no pattern comes on two days running. It takes barbell, dumbbells, a bench, parallel bars and a bar to hang from, and somebody who recovers well. Every load starts light on purpose: set each trainee&apos;s own, or put an assessment first. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole body on each of three days in 45 minutes, for somebody new to it who has a barbell, dumbbells, a bench and a bar to hang from. Repetitions grow before load. Every load starts light on purpose: set each trainee&apos;s own, or put an assessment first. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three days, barbell and bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three days, dumbbells, for size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three days, holds on floor and bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three short days, mixed equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two days of squat and hinge, two of push and pull, none of them following one of its kind; about 50 minutes each, with barbell, discs, a bench and a bar to hang from. The second block asks fewer repetitions with more load. Every load starts light on purpose: set each trainee&apos;s own, or put an assessment first. Every sixth week is a deload. The ranges are common practice. For healthy people: a condition, pain, a recent injury or a doubtful health screening needs clearance from a licensed professional first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two days, bodyweight and a bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two days, dumbbells and a bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two days, no equipment</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StatusLine</name>
    <message>
        <source>Error: {text}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StepStrip</name>
    <message>
        <source>Filled: where the trainee stands. Outlined: what comes next.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step strip, empty</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Terms</name>
    <message>
        <source>Deload: a planned easier week with fewer sets and lighter loads; afterwards all goes on where it stood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effective load: what the muscles really move; in bodyweight exercises a share of body mass, plus what is added, minus help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard set: a working set, no warm-up; it counts 1 for a muscle trained directly and 0.5 for one that helps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Monotony: how alike the days of a week are, as the mean of the seven daily loads over their standard deviation.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RIR, repetitions in reserve: how many more clean ones would have been possible at the end of the set; blank is unknown, not none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strain: the week&apos;s training load times its monotony.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Training load: how hard the session was (0 to 10) times its minutes; other activities count too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>e1RM, the estimated one-repetition maximum: the load that would go once, reckoned from a set with more repetitions.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Tests</name>
    <message>
        <source>No maximum: clean reps until {reserve} are left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No maximum: end after the first set with {reserve} or fewer clean reps left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No maximum: hold while it is clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No start could be read: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read from this test, ± {percent}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read from this test; how far off is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starts at {work}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test: sets of {amount}, from {first} up to {last}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test: {amount}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test: {amount} or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no start yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rest {time}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop atN{NO-BREAK SPACE}{stop}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>test with reps in reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>test: held while it is clean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{test} at {load}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{test} each side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{work}, as before</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TitleField</name>
    <message>
        <source>Type to rename</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TraineeForm</name>
    <message>
        <source>A change counts from today on; earlier sessions keep what was there then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A trainee needs a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Archive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Archive {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Body mass on {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring {name} back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Health and consent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Person</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove {name} and all sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody has this name already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Somebody new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every change is kept, and can be undone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept as soon as a name stands</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TraineeProgram</name>
    <message>
        <source>End {program} for {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give {program} to {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take back a change for {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{exercise}: one more day a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{what}, for {name}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Ways</name>
    <message>
        <source>Add a day off: train on {weekday}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back off to {work}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Deload from {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let another variable grow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the deload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the progress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the targets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record a clearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say what is recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stay at {work}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take another exercise</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Weeks</name>
    <message>
        <source>About {time}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At or above {count} ({of}; {source}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard sets a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No trend yet says how likely it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not trained.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is planned yet: Return leads to the day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sets a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trainee has {time}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The trend expects a maximum of {low} to {high} then (80 % band)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under the first published mark of {count}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week {number}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a deload is proposed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by muscle; dotted: published marks at {marks}; hollow: under {least}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by pattern; no published range exists: what counts is the balance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deload</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>deload?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done: {sets}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over {share}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>push for each pull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under {share}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upper for each lower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{day}: {work} was asked; {done}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, {count} hard sets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name}, {count} sets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{said}; chance to do this: {chance}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WeeksPage</name>
    <message>
        <source>Print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>being worked out …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the starts of its slots, for nobody yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the starts of its slots, with what {name} has</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from where {name} stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weeks ahead</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WeeksTable</name>
    <message>
        <source>Arrows choose a cell, Return leads to its rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks ahead</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>1 day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 rep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>next {value}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of {first} to {last}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tempo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>then {variable} moves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>variation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with {load}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with {load} of help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{first} and {last}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{work} at {load}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WorkAreas</name>
    <message>
        <source>&amp;Desk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Import</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Program</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Week and load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;ast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;rogress</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rep&amp;orts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;heet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WorkPanel</name>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancelled, nothing is changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rungwise</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_CandidateList</name>
    <message>
        <source>Exercises found</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_FirstSteps</name>
    <message>
        <source>Add a trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loads in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the demo scenario</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start with one person: their name, what they can train with, and when. Then give them a program, print the first sheet, and type what was done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The demo is an invented rowing club in a data file of its own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit of loads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each trainee can have their own</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_Headings</name>
    <message>
        <source>Fastest first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when a slower one moves</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_NameRow</name>
    <message>
        <source>1 line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is {name}?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which trainee is {name}?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a new exercise, like…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another exercise…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another trainee…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave its lines out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new on the roster</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which exercise?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>which trainee?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{count} lines</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_Nobody</name>
    <message>
        <source>Choose a trainee</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pick one in the roster at the left, or type a name after Ctrl+L.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_NoteField</name>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>dialog</name>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
