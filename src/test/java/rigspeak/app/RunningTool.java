package rigspeak.app;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/** rigspeak in a process of its own; what it prints is waited for line by line. */
final class RunningTool implements AutoCloseable {
  private static final long PATIENCE_SECONDS = 300;

  private final Process process;
  private final BlockingQueue<String> lines;
  private final BlockingQueue<String> remarks;

  RunningTool(Process process) {
    this.process = process;
    this.lines = following(process.getInputStream());
    this.remarks = following(process.getErrorStream());
  }

  /** The next line of its output. */
  String awaitLine() throws InterruptedException {
    return next(lines);
  }

  /** The next line of its remarks; it must be this one. */
  void awaitRemark(String wanted) throws InterruptedException {
    String remark = next(remarks);
    if (!remark.equals(wanted)) {
      throw new AssertionError("it said \"" + remark + "\", not \"" + wanted + "\"");
    }
  }

  private static String next(BlockingQueue<String> queue) throws InterruptedException {
    String line = queue.poll(PATIENCE_SECONDS, TimeUnit.SECONDS);
    if (line == null) {
      throw new AssertionError("it prints nothing more");
    }
    return line;
  }

  private static BlockingQueue<String> following(InputStream in) {
    BlockingQueue<String> queue = new LinkedBlockingQueue<>();
    Thread reader =
        new Thread(
            () -> {
              try (BufferedReader text =
                  new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                for (String line = text.readLine(); line != null; line = text.readLine()) {
                  queue.add(line);
                }
              } catch (IOException e) {
                queue.add("its output broke off: " + e.getMessage());
              }
            },
            "output");
    reader.setDaemon(true);
    reader.start();
    return queue;
  }

  @Override
  public void close() {
    process.destroy();
    process.onExit().join();
  }
}
