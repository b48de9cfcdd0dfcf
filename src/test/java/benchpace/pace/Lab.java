package benchpace.pace;

import benchpace.files.*;
import java.io.*;
import java.nio.file.*;
import java.util.*;

/** Scratch: dumps raw scores. args: sim COUNT DIR | dump DIR OUT */
public final class Lab {
    public static void main(String[] a) throws Exception {
        if (a[0].equals("sim")) {
            int count = Integer.parseInt(a[1]);
            Path dir = Path.of(a[2]);
            Files.createDirectories(dir);
            ClassSimulator.Habit[] h = {ClassSimulator.Habit.USUAL, ClassSimulator.Habit.GAMMA, ClassSimulator.Habit.BUNCHED, ClassSimulator.Habit.GAMMA_BUNCHED};
            try (PrintWriter t = new PrintWriter(dir.resolve("truth.jsonl").toFile())) {
                for (int j = 0; j < count; j++) {
                    int n = j % 15 < 7 ? 6 : j % 15 < 11 ? 12 : 24;
                    String id = String.format("sim-%04d", j);
                    var s = ClassSimulator.simulate(id, n, h[j / 15 % h.length], 1000 + j);
                    Files.write(dir.resolve(id + ".jsonl"), s.lines());
                    t.println(s.truth().json());
                }
            }
            return;
        }
        if (a[0].equals("replay")) {
            List<String> logs; try (var s = Files.list(Path.of(a[1]))) { logs = s.map(Path::toString).filter(x -> x.endsWith(".jsonl") && !x.endsWith("truth.jsonl")).sorted().toList(); }
            long t0 = System.nanoTime();
            System.out.println(new ReplayCommand().run(logs, a[2] + "-F.csv", a[2] + "-G.csv", a.length > 3 ? Optional.of(a[3]) : Optional.empty(), System.in, System.out, System.err) + " in " + (System.nanoTime() - t0) / 1e9);
            return;
        }
        PacePriors p = PacePriors.standard();
        for (int q = 3; q < a.length && a[0].equals("dump"); q++) {
            String[] kv = a[q].split("=");
            var rc = PacePriors.class.getRecordComponents();
            Object[] v = new Object[rc.length]; Class<?>[] ty = new Class<?>[rc.length]; boolean ok = false;
            for (int i = 0; i < rc.length; i++) {
                v[i] = rc[i].getAccessor().invoke(p); ty[i] = rc[i].getType();
                if (!ty[i].isRecord()) continue;
                var nc = ty[i].getRecordComponents(); Object[] w = new Object[nc.length]; Class<?>[] wt = new Class<?>[nc.length]; boolean hit = false;
                for (int j = 0; j < nc.length; j++) { w[j] = nc[j].getAccessor().invoke(v[i]); wt[j] = nc[j].getType(); if (nc[j].getName().equals(kv[0])) { hit = ok = true; w[j] = wt[j] == double.class ? (Object) Double.parseDouble(kv[1]) : Arrays.stream(kv[1].split(",")).map(Double::parseDouble).toList(); } }
                if (hit) v[i] = ty[i].getDeclaredConstructor(wt).newInstance(w);
            }
            if (!ok) throw new IllegalArgumentException(kv[0]);
            p = PacePriors.class.getDeclaredConstructor(ty).newInstance(v);
        }
        try (PrintWriter o = new PrintWriter(a[2] + "-seats.csv"); PrintWriter f = new PrintWriter(a[2] + "-fc.csv"); PrintWriter f2 = new PrintWriter(a[2] + "-pour.csv")) {
            o.println("class_id,seat,t,standing,step,worked,p,c,late,eta,sd,prev,silence,plan,n,nw,led,claimed");
            f.println("class_id,t,p10,p50,p90");
            f2.println("class_id,t,p10,p50,p90");
            List<Path> files;
            try (var s = Files.list(Path.of(a[1]))) { files = s.filter(x -> x.toString().endsWith(".jsonl") && !x.toString().endsWith("truth.jsonl")).sorted().toList(); }
            long evals = 0; long ns = 0;
            for (Path file : files) {
                ClassLog log; try (Reader r = Files.newBufferedReader(file)) { log = ClassLogReader.read(file.toString(), r); }
                TrackFold fold = new TrackFold(log);
                int e = 0;
                for (int tick = 0; tick <= 180; tick++) {
                    double now = tick * 0.5;
                    while (e < log.events().size() && log.events().get(e).seconds() <= now * 60) fold.apply(log.events().get(e++));
                    ClassTrack tr = fold.track();
                    long t0 = System.nanoTime();
                    Evaluation ev = new Evaluation(tr, now, p);
                    double[] late = new double[tr.seats().size()];
                    ns += System.nanoTime() - t0; evals++;
                    boolean all = true;
                    int nw = 0;
                    for (int i = 0; i < tr.seats().size(); i++) if (ev.judged(i)) nw++;
                    for (int i = 0; i < tr.seats().size(); i++) {
                        SeatProgress g = ev.seats.get(i);
                        if (g.standing() != SeatProgress.Standing.POURED && g.standing() != SeatProgress.Standing.AWAY) all = false;
                        SeatOdds q = ev.odds.get(i);
                        if (!ev.judged(i)) continue;
                        var b = ev.tempo.belief(i, g.step());
                        o.printf(Locale.ROOT, "%s,%d,%.0f,%s,%d,%.2f,%.4f,%.4f,%.3f,%.3f,%.3f,%.2f,%.2f,%.1f,%d,%d,%d,%d%n", log.classId(), tr.seats().get(i).seat(), now * 60, g.standing(), g.step(), g.workedMinutes(), q.stalled(), q.forgotten(), late[i], b.meanLog(), b.sdLog(), g.startMinutes(), now - ev.habits.lastTapMinutes(), tr.steps().get(g.step()).planMinutes(), tr.seats().size(), nw, tr.steps().get(g.step()).led() ? 1 : 0, ev.claimed(i) ? 1 : 0);
                    }
                    if (tick % 10 == 0 && tick >= 10) {
                        PourDraws d = new PourDraws(tr, ev.seats, ev.odds, ev.tempo, ev.openings, p, now, 1000, 5, PourDraws.Without.NOTHING);
                        Forecast c = new FinishForecast(tr, d, p, now).forecast(7);
                        f.printf(Locale.ROOT, "%s,%.0f,%.1f,%.1f,%.1f%n", log.classId(), now * 60, c.p10() * 60, c.p50() * 60, c.p90() * 60);
                        double[] mx = new double[1000]; for (int k = 0; k < 1000; k++) mx[k] = Arrays.stream(d.pours(k)).max().orElse(0); Arrays.sort(mx);
                        f2.printf(Locale.ROOT, "%s,%.0f,%.1f,%.1f,%.1f%n", log.classId(), now * 60, 60*mx[100], 60*mx[500], 60*mx[900]);
                    }
                    if (all && tick > 20 && tick > 92) break;
                }
            }
            System.out.printf("%d evaluations, %.3f ms each%n", evals, ns / 1e6 / evals);
        }
    }
}
