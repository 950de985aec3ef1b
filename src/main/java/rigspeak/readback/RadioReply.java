package rigspeak.readback;

import java.util.List;
import rigspeak.dialogue.Reply;
import rigspeak.rig.Place;
import rigspeak.rig.Slot;

/** What is to be spoken on the radio, before it is put into words. */
public sealed interface RadioReply {

  /**
   * Values that are as planned, on their way back to who said them.
   *
   * @param left how many items of the plan have not been said yet
   */
  record AsPlanned(List<Reply.Item> items, int left) implements RadioReply {
    public AsPlanned {
      items = List.copyOf(items);
    }
  }

  /**
   * Values that are not as planned; affirm or negative is waited for.
   *
   * @param present the support that the talk is about, which need not be named
   */
  record Differ(Place present, List<Difference> items) implements RadioReply {
    public Differ {
      items = List.copyOf(items);
    }
  }

  /**
   * What has not been said.
   *
   * @param first of them, no more than a listener keeps in mind
   * @param howMany in all
   */
  record NotSaidYet(Place present, List<Difference.NotSaid> first, int howMany)
      implements RadioReply {
    public NotSaidYet {
      first = List.copyOf(first);
    }
  }

  /** What was heard is wrong; it is to be said again. */
  record SayThem(List<Slot> slots) implements RadioReply {
    public SayThem {
      slots = List.copyOf(slots);
    }
  }

  /**
   * Everything was said; affirm or negative is waited for.
   *
   * @param items how many the plan has
   * @param other those that were affirmed to be otherwise
   */
  record AllSaid(int items, List<Difference> other) implements RadioReply {
    public AllSaid {
      other = List.copyOf(other);
    }
  }

  /** The whole was called wrong. */
  record WhatIsWrong() implements RadioReply {}

  /** "Roger" is no answer. */
  record RogerIsNoAnswer() implements RadioReply {}

  /** An affirm where nothing was asked. */
  record NothingAsked() implements RadioReply {}

  /** Something that has no place in a read-back. */
  record OnlyReadBack() implements RadioReply {}

  /** The end. */
  record Ended(Readback.Outcome outcome, TimeOfDay at) implements RadioReply {}

  /** Something was said after the end, so that it counts no more. */
  record NoLongerEnded() implements RadioReply {}

  /** What the dialogue has to say to it. */
  record Plain(Reply reply) implements RadioReply {}
}
